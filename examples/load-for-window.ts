// Which load fails inside 6 to 9 reps at a slow tempo, among what the cable stack can make?
import { reachableLoads } from '@windlass/core/equipment';
import { formatLoad, kg } from '@windlass/core/load';
import {
  enduranceCurves,
  loadForWindow,
  oneRepMaxKg,
  priorFor,
  strengthFrom,
} from '@windlass/core/strength';
import { parseTempo, secondsPerRep } from '@windlass/core/tempo';

const tempo = parseTempo('4-0-2-0');
if (!tempo.ok) throw new Error(tempo.problems[0]?.message);
const pace = secondsPerRep(tempo.value.tempo);

const stack = reachableLoads({
  kind: 'stack',
  id: 'pulldown',
  name: 'Pulldown',
  first: { value: 7.5, unit: 'kg' },
  rest: [{ weight: { value: 5, unit: 'kg' }, pieces: 18 }],
  addOns: [{ weight: { value: 1.25, unit: 'kg' }, pieces: 2 }],
  pulleyRatio: 1,
});
if (stack.kind === 'none') throw new Error(stack.message);

// Two sets: one to failure a week ago, one four days ago that was stopped with about two left.
const belief = strengthFrom({
  sets: [
    { load: kg(52.5), reps: 10, end: { kind: 'failure' }, day: 0, secondsPerRep: pace },
    { load: kg(55), reps: 7, end: { kind: 'reserve', repsLeft: 2 }, day: 3, secondsPerRep: pace },
  ],
  prior: priorFor(enduranceCurves.pull),
  today: 7,
});
if (belief.kind === 'nothing-known') throw new Error('no set is known');

const percent = (share: number) => `${Math.round(share * 100)} %`;
const max = oneRepMaxKg(belief);
console.log(
  `one-rep max ${max.low.toFixed(0)} to ${max.high.toFixed(0)} kg (${percent(max.level)})`,
);

const window = { minReps: 6, maxReps: 9 };
const answer = loadForWindow({
  posterior: belief,
  choices: stack.loads,
  window,
  secondsPerRep: pace,
});
if (answer.kind !== 'found') throw new Error(answer.kind);
for (const one of [answer.lighter, answer.best, answer.heavier]) {
  if (!one) continue;
  const load = formatLoad(one.choice.shown, { unit: 'kg' });
  const mark = one === answer.best ? '  <- best chance' : '';
  console.log(
    `${load}: ${percent(one.inside)} inside 6 to 9, about ${one.reps.likely} reps${mark}`,
  );
}
