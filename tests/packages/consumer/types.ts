// What the public types promise, compiled against the packed types under every way of resolving them.
import {
  type calculators,
  defineCalculator,
  type InputOf,
  type Texts,
} from '@windlass/calculators';
import type { Outcome, Problem } from '@windlass/core/basis';
import { addLoads, kg, type Load, type LoadValue, lb, parseLoad, toKg } from '@windlass/core/load';
import { readGym } from '@windlass/core/schema';
import { planSession, type SessionPlan, type SessionQuestion } from '@windlass/core/session';
import { type LoadChance, loadForWindow, type WindowQuestion } from '@windlass/core/strength';
import { secondsPerRep } from '@windlass/core/tempo';

type Same<A, B> =
  (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
function holds<_Claim extends true>(): void {}

export function loadsAreBranded(): void {
  const bar: Load = kg(20);
  const steps: number = bar;
  const sum: Load = addLoads(bar, lb(45));
  // @ts-expect-error A bare number is no load: it has no unit.
  const bare: Load = 20;
  // @ts-expect-error Nor is what arithmetic on two loads gives: addLoads keeps the range.
  const added: Load = bar + sum;
  // @ts-expect-error A written load is read first.
  toKg({ value: 20, unit: 'kg' });
  // @ts-expect-error There are two units.
  const stone: LoadValue = { value: 3, unit: 'stone' };
  console.log(steps, bare, added, stone);
}

export function outcomesAreToldApart(text: string, file: unknown): LoadValue | readonly Problem[] {
  const read = parseLoad(text, { unit: 'kg' });
  holds<Same<typeof read, Outcome<LoadValue>>>();
  // @ts-expect-error There is no value before it is known that the text could be read.
  console.log(read.value);
  const gym = readGym(file);
  if (!gym.ok) return gym.problems;
  // @ts-expect-error What is given back is not written to.
  gym.value.plates.push({ weight: { value: 20, unit: 'kg' }, pieces: 2 });
  return read.ok ? read.value : read.problems;
}

interface Labelled {
  readonly load: Load;
  readonly label: string;
}

export function choicesKeepTheirOwnFields(question: WindowQuestion<Labelled>): string {
  const answer = loadForWindow(question);
  // @ts-expect-error A best load is there only when one was found.
  console.log(answer.best);
  switch (answer.kind) {
    case 'found':
      holds<Same<typeof answer.best, LoadChance<Labelled>>>();
      return answer.best.choice.label;
    case 'none-near':
      holds<Same<typeof answer.reason, 'all-too-heavy' | 'all-too-light' | 'gap'>>();
      return answer.reason;
    case 'no-loads':
      return '';
  }
}

export function plansAreToldApart(question: SessionQuestion): number {
  const plan: SessionPlan = planSession(question);
  // @ts-expect-error There are lifts only where the session was planned.
  console.log(plan.lifts);
  if (plan.kind !== 'session') return 0;
  return plan.lifts.length;
}

export function temposHaveFourParts(): void {
  const fast = { lowerSeconds: 3, pauseAfterLowerSeconds: 0, pauseAfterLiftSeconds: 0 } as const;
  secondsPerRep({ ...fast, liftSeconds: 'X' });
  // @ts-expect-error Only the lift may be as fast as possible.
  secondsPerRep({ ...fast, liftSeconds: 1, lowerSeconds: 'X' });
  // @ts-expect-error All four parts are given.
  secondsPerRep(fast);
}

const fields = {
  target: {
    kind: 'load',
    label: 'Load',
    help: 'All of it.',
    minKg: 1,
    maxKg: 500,
    step: { kg: 1, lb: 2 },
    default: null,
    optional: true,
  },
  side: {
    kind: 'choice',
    label: 'Side',
    help: 'One.',
    options: [
      { id: 'left', label: 'Left' },
      { id: 'right', label: 'Right' },
    ],
    default: 'left',
  },
  reps: {
    kind: 'number',
    label: 'Reps',
    help: 'Done.',
    unit: 'reps',
    min: 1,
    max: 30,
    step: 1,
    default: 8,
  },
} as const;

export function inputsFollowFromFields(input: InputOf<typeof fields>): void {
  holds<Same<typeof input.target, LoadValue | null>>();
  holds<Same<typeof input.side, 'left' | 'right'>>();
  holds<Same<typeof input.reps, number>>();
  holds<Same<Parameters<(typeof calculators)[number]['answer']>, [texts: Texts]>>();
  // @ts-expect-error A definition says everything about its result.
  defineCalculator({ id: 'half', title: 'Half', question: 'Half?', fields, groups: [] });
}
