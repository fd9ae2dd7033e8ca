import type { Source } from '../basis/index.ts';
import { changeLoading, type EquipmentNote } from '../equipment/index.ts';
import type { AboveWork, AboveWorkCondition } from './AboveWork.ts';
import type { BuiltRamp } from './buildRamp.ts';
import { capacityKept } from './capacityKept.ts';
import type { RampPlan } from './Ramp.ts';
import type { RampGear } from './rampGear.ts';
import type { RampSettings } from './rampSettings.ts';
import { warmupSources } from './warmupSources.ts';

const NO_INJURY_DATA: EquipmentNote = {
  code: 'warmup.no-injury-data',
  message: 'Trials of warm-ups measure strength and power. They give no data on injuries.',
};

const CAPACITY_NOT_KEPT: EquipmentNote = {
  code: 'warmup.capacity-not-kept',
  message:
    'Even one short step costs this lifter more than it should. Rest longer before the work set, or leave the ramp out.',
};

/** The plan of a built ramp, with its totals. */
export function writeRamp(
  built: BuiltRamp,
  gear: RampGear,
  conditions: readonly AboveWorkCondition[] | undefined,
  settings: RampSettings,
): RampPlan {
  const { steps, above, work, changeToWork, sets, enough } = built;
  const stripDown = changeLoading(work.loading, 'nothing');
  const changes = [...steps, ...(above ? [above] : [])].map(({ change }) => change);
  const firstChange = changes[0]?.pieces ?? 0;
  const seconds = sets.map(
    ({ reps, secondsPerRep, restSeconds }) => reps * secondsPerRep + restSeconds,
  );
  return {
    kind: 'ramp',
    steps,
    aboveWork: aboveWorkOf(conditions, above),
    work,
    changeToWork,
    stripDown,
    piecesHandled: sum([...changes, changeToWork, stripDown].map(({ pieces }) => pieces)),
    minutes: (firstChange * settings.secondsPerPiece + sum(seconds)) / 60,
    reps: sum(sets.map(({ reps }) => reps)),
    capacityKept: capacityKept(sets, settings.state),
    notes: [...gear.notes, NO_INJURY_DATA, ...(enough ? [] : [CAPACITY_NOT_KEPT])],
    sources: [...RAMP_SOURCES, ...(conditions ? ABOVE_SOURCES : [])],
  };
}

const RAMP_SOURCES: readonly Source[] = [
  warmupSources.fewRepsNearTheWork,
  warmupSources.fasterFirstSet,
  warmupSources.noMoreReps,
  warmupSources.manyRepsCost,
  warmupSources.noInjuryData,
  warmupSources.rampShape,
];

const ABOVE_SOURCES: readonly Source[] = [
  warmupSources.potentiationSmall,
  warmupSources.potentiationMixed,
];

function aboveWorkOf(
  conditions: readonly AboveWorkCondition[] | undefined,
  step: RampPlan['steps'][number] | undefined,
): AboveWork {
  if (conditions === undefined) return { kind: 'off' };
  return step === undefined
    ? { kind: 'left-out', conditions }
    : { kind: 'included', step, conditions };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
