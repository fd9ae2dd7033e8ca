// Says a set aloud on paper: which phase begins at which second, for a lift that starts with the lift.
import { cueTimeline, parseTempo, secondsPerSet } from '@windlass/core/tempo';

const reading = parseTempo('3-0-X-1');
if (!reading.ok) throw new Error(reading.problems[0]?.message);
const { tempo } = reading.value;

const { cues, endSeconds } = cueTimeline(tempo, { reps: 2, startsWith: 'lift', leadInSeconds: 3 });
for (const cue of cues) console.log(JSON.stringify(cue));
console.log(`the set ends at ${endSeconds} s`);
console.log(
  `ten of them take ${secondsPerSet(tempo, 10, { startsWith: 'lift', lastPause: 'counted' })} s`,
);
