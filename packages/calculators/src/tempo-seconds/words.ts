import { formatNumber } from '../ui/formatNumber.ts';

const seconds = (value: number) => `${formatNumber(value, 3)} s`;
const repsWords = (reps: number) => `${reps} ${reps === 1 ? 'rep' : 'reps'}`;

/** What the tempo calculator says about its result. */
export const said = {
  takes: (reps: number) => `${repsWords(reps)} ${reps === 1 ? 'takes' : 'take'}`,
  perRep: (value: number) => `${seconds(value)} a rep`,
  noPause: 'Counted, not predicted. The rep ends without a pause, so nothing is left to choose.',
  withPause: (other: number) =>
    `Counted, not predicted, with the last pause in. Without it: ${seconds(other)}.`,
  withoutPause: (other: number) =>
    `Counted, not predicted, with the last pause left out. With it: ${seconds(other)}.`,
  formula: 'set = reps × (lower + pause + lift + pause), less the last pause where it is left out',
  rep: (parts: readonly number[], whole: number) =>
    `rep = ${parts.map((part) => formatNumber(part, 3)).join(' + ')} = ${seconds(whole)}`,
  set: (reps: number, rep: number, whole: number) =>
    `set = ${reps} × ${formatNumber(rep, 3)} = ${seconds(whole)}`,
  setLess: (reps: number, rep: number, whole: number) =>
    `set = ${reps} × ${formatNumber(rep, 3)} − ${formatNumber(reps * rep - whole, 3)} = ${seconds(whole)}`,
  fast: 'A fast lift has no fixed time. The seconds it counts for are a convention for adding up; nobody should slow down to fill them.',
  restsOn:
    'Arithmetic on what was asked for. What is done under a load drifts: people speed up as they tire.',
  notation:
    'Trade notation: seconds of lowering, pause, lift, pause; X is a lift as fast as possible. The reverse order is in use too, so the order is always asked for.',
  whichLoad: 'Which load fails at this tempo?',
  drawing: (rep: number, phases: readonly string[]) =>
    `One rep, ${seconds(rep)}: ${phases.join(', ')}.`,
  phase: (name: string, value: number) => `${name} ${seconds(value)}`,
  inTheSet: 'In the set',
  underLoad: 'Under load',
  ofSet: (whole: number, reps: number) => `of ${seconds(whole)}, in ${repsWords(reps)}`,
  inside: (low: number, high: number) => `Inside ${low} to ${high} s`,
  seconds,
  counts: (fewest: number, most: number) =>
    fewest === most ? repsWords(fewest) : `${fewest} to ${most} reps`,
  spans: (low: number, high: number) =>
    low === high ? seconds(low) : `${seconds(low)} to ${seconds(high)}`,
  noneFits: 'no count fits',
  around: (less: readonly [number, number], more: readonly [number, number]) =>
    `${repsWords(less[0])} take ${seconds(less[1])}, ${more[0]} take ${seconds(more[1])}`,
} as const;
