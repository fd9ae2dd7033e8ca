import { formatTempo } from '@windlass/core/tempo';
import type { TempoInput, TempoResult } from './compute.ts';

/** The same seconds with the library. */
export function snippet(input: TempoInput, { setSeconds }: TempoResult): string {
  const { tempo, reps, starts, lastPause, fastLift } = input;
  return `import { parseTempo, secondsPerSet } from '@windlass/core/tempo';

const read = parseTempo('${formatTempo(tempo)}'); // lowering first
if (!read.ok) throw new Error(read.problems[0]?.message);

const seconds = secondsPerSet(read.value.tempo, ${reps}, {
  startsWith: '${starts}',
  lastPause: '${lastPause}',
  fastLiftSeconds: ${fastLift},
});
console.log(seconds); // ${setSeconds}
`;
}
