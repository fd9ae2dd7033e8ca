import { findExercise } from '../anatomy/index.ts';
import type { ReachableLoad } from '../equipment/index.ts';
import { loadValue, type Unit } from '../load/index.ts';
import { formatTempo, phasesOfRep, type TempoPhase } from '../tempo/index.ts';
import { fixedWords } from './fixedWords.ts';
import type { FindingLift, LeftOutLift, LiftPlan, PlannedLift } from './LiftPlan.ts';
import { liftName } from './liftName.ts';
import { liftNotes } from './liftNotes.ts';
import type { Lift } from './liftOf.ts';
import { countedWords, handlingWords, loadingWords } from './loadingWords.ts';
import type { SheetFinding, SheetLeftOut, SheetLift, SheetLoad } from './Sheet.ts';
import { sheetChain } from './sheetChain.ts';
import { sheetJoin } from './sheetJoin.ts';

/** A lift of a plan as it stands on the sheet. */
export function sheetLift(
  plan: LiftPlan,
  unit: Unit,
  locale: string,
): SheetLift | SheetFinding | SheetLeftOut {
  if (plan.kind === 'left-out') return leftOutOf(plan);
  return plan.kind === 'finding' ? findingOf(plan, unit, locale) : plannedOf(plan, unit, locale);
}

function plannedOf(plan: PlannedLift, unit: Unit, locale: string): SheetLift {
  return {
    kind: 'planned',
    ...headOf(plan.lift, locale),
    load: sheetLoad(plan.work.choice, plan.lift, unit, locale),
    ...warmUpOf(plan, unit, locale),
    sets: plan.sets.map(({ reps, seconds, chance }) => ({ reps, seconds, chance })),
    restSeconds: plan.lift.intent.restSeconds,
    ...(plan.join && { join: sheetJoin(plan.join, unit, locale) }),
    ...(plan.chain && { chain: sheetChain(plan.chain) }),
    ...wishesOf(plan, unit, locale),
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
    ...headOf(lift, locale),
    firstLoad: sheetLoad(plan.firstTry, lift, unit, locale),
    reps,
    ...wishesOf(plan, unit, locale),
    notes: [
      `Nothing is known yet${plan.overruled.load ? '' : ', so the first load is the lightest one'}. Do ${reps} reps and stop early if only ${stopWithLeft} are left.`,
      `Then step up by how many were left, in at most ${mostTries} sets; write each one down with its reps left.`,
    ],
  };
}

function leftOutOf({ intent, message, exchanges }: LeftOutLift): SheetLeftOut {
  return {
    kind: 'left-out',
    name: nameOf(intent.exercise),
    reason: message,
    exchanges: exchanges.map(({ name, equipmentName, reasonsFor, reasonsAgainst }) => ({
      name,
      equipment: equipmentName,
      reasons: [...reasonsFor, ...reasonsAgainst],
    })),
  };
}

function nameOf(id: string): string {
  const found = findExercise(id);
  return found.kind === 'found' ? found.exercise.name : id.replaceAll('-', ' ');
}

function wishesOf(plan: PlannedLift | FindingLift, unit: Unit, locale: string) {
  return {
    ...(plan.chosenFor && { chosenFor: plan.chosenFor.reasons }),
    fixed: fixedWords(plan, unit, locale),
    refused: plan.refused.map(({ message }) => message),
  };
}

function headOf({ intent, exercise, variant, equipment }: Lift, locale: string) {
  return {
    name: liftName(exercise, variant),
    equipment: equipment.name,
    tempo: formatTempo(intent.tempo),
    count: countWords({ intent, exercise }, locale),
    window: intent.window,
  };
}

function countWords({ intent, exercise }: Pick<Lift, 'intent' | 'exercise'>, locale: string) {
  const { format } = new Intl.NumberFormat(locale);
  const phases = phasesOfRep(intent.tempo, { startsWith: exercise.startsWith });
  const words = phases.map(({ phase, seconds, isFast }) =>
    isFast ? 'lift fast' : phaseWords[phase](format(seconds)),
  );
  return words.join(', ');
}

const pauseWords = (seconds: string) => `pause ${seconds}\u00a0s`;

const phaseWords: Readonly<Record<TempoPhase, (seconds: string) => string>> = {
  lower: (seconds) => `lower ${seconds}\u00a0s`,
  'pause-after-lower': pauseWords,
  lift: (seconds) => `lift ${seconds}\u00a0s`,
  'pause-after-lift': pauseWords,
};

function sheetLoad(reachable: ReachableLoad, lift: Lift, unit: Unit, locale: string): SheetLoad {
  const { shown, loading } = reachable;
  return {
    value: loadValue(shown, unit),
    words: countedWords(reachable, lift.loads.counts, unit, locale),
    loading: loadingWords(loading, locale),
  };
}
