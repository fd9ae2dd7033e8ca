import { longestSeconds } from '@windlass/calculators/live';
import { loadValue, type Unit } from '@windlass/core/load';
import { stopRulesFor } from '@windlass/core/safety';
import type { FindingLift, PlannedLift, SheetLift } from '@windlass/core/session';
import type { Planned } from '../../planner/state/planFrom.ts';
import type { FloorChain, FloorLift, FloorSession, FloorStep } from './FloorSession.ts';

type DoneLift = PlannedLift | FindingLift;

/** A plan laid out as the sets to do, one after the other. Lifts that are left out are named. */
export function layOutSession({ plan, sheet, question }: Planned): FloorSession {
  const { client, gym, intent } = question;
  const base = {
    client: client.name,
    gym: gym.name,
    date: intent.date,
    unit: intent.unit,
    ...(client.bodyWeight && { bodyWeight: client.bodyWeight }),
    cautions: plan.cautions,
    stopRules: stopRulesFor(client.health),
  };
  const empty = { ...base, lifts: [], leftOut: [], steps: [] };
  if (plan.kind === 'ask-first') {
    return { ...empty, askFirst: { reasons: plan.reasons, ask: plan.ask } };
  }
  if (plan.kind === 'too-short') return { ...empty, tooShort: plan.message };
  const listed = sheet.kind === 'sheet' ? sheet.lifts : [];
  const done = plan.lifts.flatMap((lift, place) => {
    const said = listed[place];
    return lift.kind === 'left-out' || !said || said.kind === 'left-out' ? [] : [{ lift, said }];
  });
  return {
    ...base,
    lifts: done.map(({ lift, said }) => liftOf(lift, said)),
    leftOut: listed.flatMap((lift) =>
      lift.kind === 'left-out' ? [{ name: lift.name, reason: lift.reason }] : [],
    ),
    steps: done.flatMap(({ lift }, place) => {
      const next = done[place + 1]?.lift;
      if (next?.kind === 'planned' && next.join?.place === 'second') return [];
      const before = done[place - 1]?.lift;
      const steps =
        lift.kind === 'planned' && lift.join?.place === 'second' && before?.kind === 'planned'
          ? roundSteps(before, lift, place, intent.unit)
          : stepsOf(lift, place, intent.unit);
      return withLastRest(steps, next ? intent.changeSeconds : 0);
    }),
  };
}

function liftOf(planned: DoneLift, { name, notes }: Pick<SheetLift, 'name' | 'notes'>): FloorLift {
  const { exercise, equipment, intent, loads } = planned.lift;
  return {
    exercise: exercise.id,
    name,
    equipment: equipment.id,
    equipmentName: equipment.name,
    ...(equipment.kind === 'barbell' && { bar: equipment.bar }),
    counts: loads.counts,
    tempo: intent.tempo,
    startsWith: exercise.startsWith,
    window: intent.window,
    repsInReserve: planned.kind === 'planned' ? planned.repsInReserve : planned.stopWithLeft,
    notes,
  };
}

function stepsOf(planned: DoneLift, lift: number, unit: Unit): readonly FloorStep[] {
  const isOneSided = planned.lift.exercise.sides === 'one';
  const { restSeconds, sets } = planned.lift.intent;
  const work =
    planned.kind === 'planned'
      ? planned.sets.map(({ reps }, place) => ({
          load: planned.work.choice,
          reps: reps.likely,
          expected: reps,
          ...(place === planned.sets.length - 1 && chainOf(planned, unit)),
        }))
      : Array.from({ length: sets }, () => ({
          load: null,
          reps: planned.lift.intent.window.minReps,
        }));
  const tries =
    planned.kind === 'finding'
      ? Array.from({ length: planned.mostTries }, (_, place) => ({
          load: place === 0 ? planned.firstTry : null,
          reps: planned.reps,
        }))
      : [];
  return [
    ...warmUpSteps(planned, lift),
    ...tries.flatMap((one, place) =>
      oneOrBothSides(
        { ...one, lift, kind: 'try', number: place + 1, of: tries.length, restSeconds },
        isOneSided,
      ),
    ),
    ...work.flatMap((one, place) =>
      oneOrBothSides(
        { ...one, lift, kind: 'work', number: place + 1, of: work.length, restSeconds },
        isOneSided,
      ),
    ),
  ];
}

/** The last set of a lift may go on past lifting failure, on each side. */
function chainOf(
  { lift, work, secondsPerRep, chain }: PlannedLift,
  unit: Unit,
): { readonly chain?: FloorChain } {
  if (!chain) return {};
  const plan = {
    exerciseId: lift.exercise.id,
    load: loadValue(work.choice.shown, unit),
    stages: chain.stages.map(({ stage }) => stage),
    secondsPerRep,
    maxSeconds: longestSeconds(chain),
  };
  return { chain: { plan, needs: chain.needs.map(({ words }) => words) } };
}

/** Two lifts in rounds: both are warmed up, then a set of each; `lift` is the place of the second. */
function roundSteps(
  first: PlannedLift,
  second: PlannedLift,
  lift: number,
  unit: Unit,
): readonly FloorStep[] {
  const { transitionSeconds = 0, waits = [] } = second.join ?? {};
  const [a, b] = [stepsOf(first, lift - 1, unit), stepsOf(second, lift, unit)];
  const warmUp = [...a, ...b].filter(({ kind }) => kind === 'warm-up');
  const rounds = Math.max(first.sets.length, second.sets.length);
  const sets = Array.from({ length: rounds }, (_, round) => {
    const inRound = (steps: readonly FloorStep[]) =>
      steps.filter(({ kind, number }) => kind === 'work' && number === round + 1);
    const onto = inRound(b).length > 0 ? transitionSeconds : (waits[round] ?? 0);
    return [...withLastRest(inRound(a), onto), ...withLastRest(inRound(b), waits[round] ?? 0)];
  });
  return [...warmUp, ...sets.flat()];
}

/** A warm-up set of an exercise that does one side after the other is one step: it is not counted. */
function warmUpSteps(planned: DoneLift, lift: number): readonly FloorStep[] {
  if (planned.kind !== 'planned' || planned.warmUp.kind !== 'ramp') return [];
  const { steps } = planned.warmUp;
  const isEachSide = planned.lift.exercise.sides === 'one';
  return steps.map(({ load, reps, restSeconds }, place) => ({
    lift,
    kind: 'warm-up',
    number: place + 1,
    of: steps.length,
    ...(isEachSide && { isEachSide }),
    load,
    reps: Math.round(reps),
    restSeconds,
  }));
}

/** The sides follow each other without a rest. */
function oneOrBothSides(step: FloorStep, isOneSided: boolean): readonly FloorStep[] {
  const whole = { ...step, reps: Math.round(step.reps) };
  if (!isOneSided) return [whole];
  return [
    { ...whole, side: 'left', restSeconds: 0 },
    { ...whole, side: 'right' },
  ];
}

function withLastRest(steps: readonly FloorStep[], restSeconds: number): readonly FloorStep[] {
  return steps.map((step, place) => (place === steps.length - 1 ? { ...step, restSeconds } : step));
}
