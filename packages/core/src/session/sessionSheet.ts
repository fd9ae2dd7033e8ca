import type { ReachableLoad } from '../equipment/index.ts';
import { loadValue, type Unit } from '../load/index.ts';
import type { Caution } from '../safety/index.ts';
import { formatTempo, phasesOfRep, type TempoPhase } from '../tempo/index.ts';
import { liftNotes } from './liftNotes.ts';
import type { Lift } from './liftOf.ts';
import { countedWords, handlingWords, loadingWords } from './loadingWords.ts';
import type { FindingLift, LeftOutLift, PlannedLift, SessionPlan } from './SessionPlan.ts';
import type {
  AskFirstSheet,
  SessionSheet,
  SheetCaution,
  SheetFinding,
  SheetLeftOut,
  SheetLift,
  SheetLoad,
} from './Sheet.ts';

/**
 * A plan in words and numbers: what a client can follow and what another program can read. Loads
 * are values with their unit, in the unit of the plan where that is exact.
 *
 * @param plan from `planSession`.
 * @param locale BCP 47 tag for the numbers in words.
 */
export function sessionSheet(plan: SessionPlan, locale = 'en'): SessionSheet | AskFirstSheet {
  const cautions = plan.cautions.map(cautionOf);
  if (plan.kind === 'ask-first') {
    const { clientName: client, date, reasons, ask } = plan;
    return { kind: 'ask-first', client, date, reasons, ask, cautions };
  }
  const { unit } = plan;
  return {
    kind: 'sheet',
    client: plan.clientName,
    gym: plan.gymName,
    date: plan.date,
    minutes: plan.minutes,
    lifts: plan.lifts.map((lift) => {
      if (lift.kind === 'left-out') return leftOutOf(lift);
      return lift.kind === 'finding' ? findingOf(lift, unit, locale) : liftOf(lift, unit, locale);
    }),
    cautions,
    stop: plan.stopRules.map(({ sign, action }) => `${sign}: ${action}`),
  };
}

function liftOf(plan: PlannedLift, unit: Unit, locale: string): SheetLift {
  return {
    kind: 'planned',
    ...headOf(plan.lift),
    load: sheetLoad(plan.work.choice, plan.lift, unit, locale),
    ...warmUpOf(plan, unit, locale),
    sets: plan.sets.map(({ reps, seconds, chance }) => ({ reps, seconds, chance })),
    restSeconds: plan.lift.intent.restSeconds,
    notes: liftNotes(plan, unit, locale),
  };
}

function warmUpOf({ lift, warmUp }: PlannedLift, unit: Unit, locale: string) {
  if (warmUp.kind === 'none') return { warmUp: [], changeToWork: '', warmUpNote: warmUp.message };
  const changeToWork = handlingWords(warmUp.changeToWork, locale);
  if (warmUp.kind === 'no-ramp') return { warmUp: [], changeToWork, warmUpNote: warmUp.message };
  const steps = warmUp.steps.map(({ load, reps, restSeconds, change }) => ({
    load: sheetLoad(load, lift, unit, locale),
    reps,
    restSeconds,
    change: handlingWords(change, locale),
  }));
  return { warmUp: steps, changeToWork, warmUpNote: '' };
}

function findingOf(plan: FindingLift, unit: Unit, locale: string): SheetFinding {
  const { reps, stopWithLeft, mostTries, lift } = plan;
  return {
    kind: 'finding',
    ...headOf(lift),
    firstLoad: sheetLoad(plan.firstTry, lift, unit, locale),
    reps,
    notes: [
      `Nothing is known yet, so the first load is the lightest one. Do ${reps} reps and stop early if only ${stopWithLeft} are left.`,
      `Then step up by how many were left, in at most ${mostTries} sets; write each one down with its reps left.`,
    ],
  };
}

function leftOutOf({ intent, message }: LeftOutLift): SheetLeftOut {
  return { kind: 'left-out', name: intent.exercise.replaceAll('-', ' '), reason: message };
}

function headOf({ intent, exercise, variant, equipment }: Lift) {
  return {
    name: variant ? `${exercise.name}, ${variant.name.toLowerCase()}` : exercise.name,
    equipment: equipment.name,
    tempo: formatTempo(intent.tempo),
    count: countWords({ intent, exercise }),
    window: intent.window,
  };
}

function countWords({ intent, exercise }: Pick<Lift, 'intent' | 'exercise'>): string {
  const phases = phasesOfRep(intent.tempo, { startsWith: exercise.startsWith });
  const words = phases.map(({ phase, seconds, isFast }) =>
    isFast ? 'lift fast' : `${phaseWords[phase]} ${seconds} s`,
  );
  return words.join(', ');
}

const phaseWords: Readonly<Record<TempoPhase, string>> = {
  lower: 'lower',
  'pause-after-lower': 'pause',
  lift: 'lift',
  'pause-after-lift': 'pause',
};

function sheetLoad(reachable: ReachableLoad, lift: Lift, unit: Unit, locale: string): SheetLoad {
  const { shown, loading } = reachable;
  return {
    value: loadValue(shown, unit),
    words: countedWords(reachable, lift.loads.counts, unit, locale),
    loading: loadingWords(loading, locale),
  };
}

function cautionOf({ level, what, why, instead, ask }: Caution): SheetCaution {
  return { level, what, why, instead, ask };
}
