import { stopRulesFor } from '@windlass/core/safety';
import type { FindingLift, PlannedLift } from '@windlass/core/session';
import type { Planned } from '../../planner/state/planFrom.ts';
import type { FloorLift, FloorSession, FloorStep } from './FloorSession.ts';

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
      const isLast = place === done.length - 1;
      return withLastRest(stepsOf(lift, place), isLast ? 0 : intent.changeSeconds);
    }),
  };
}

function liftOf(
  planned: DoneLift,
  { name, notes }: { readonly name: string; readonly notes: readonly string[] },
): FloorLift {
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

function stepsOf(planned: DoneLift, lift: number): readonly FloorStep[] {
  const isOneSided = planned.lift.exercise.sides === 'one';
  const { restSeconds, sets } = planned.lift.intent;
  const work =
    planned.kind === 'planned'
      ? planned.sets.map(({ reps }) => ({
          load: planned.work.choice,
          reps: reps.likely,
          expected: reps,
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

/** A warm-up set of an exercise that does one side after the other is one step: it is not counted. */
function warmUpSteps(planned: DoneLift, lift: number): readonly FloorStep[] {
  if (planned.kind !== 'planned' || planned.warmUp.kind !== 'ramp') return [];
  const { steps } = planned.warmUp;
  return steps.map(({ load, reps, restSeconds }, place) => ({
    lift,
    kind: 'warm-up',
    number: place + 1,
    of: steps.length,
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
