import { readDecimal } from '@windlass/calculators/ui';
import { isList, isRecord, type Json } from './tree.ts';

/** Fields of a plan file that hold a number; everything else that was typed stays text. */
const numbers: ReadonlySet<string> = new Set([
  'pieces',
  'thicknessMm',
  'diameterMm',
  'sleeveMm',
  'handles',
  'posts',
  'pulleyRatio',
  'leverRatio',
  'railDegrees',
  'ageYears',
  'systolic',
  'diastolic',
  'intensityCap',
  'repsInReserve',
  'painLimit',
  'reps',
  'repsLeft',
  'atLeast',
  'minReps',
  'maxReps',
  'sets',
  'restSeconds',
  'changeSeconds',
  'minutesAtMost',
  'transitionSeconds',
  'maxSeconds',
  'secondsEach',
  'maxLowerings',
  'loadShare',
  'shortNights',
]);

/**
 * The plan file that a draft stands for: what was typed into a number field becomes a number where
 * it reads as one, with a decimal comma or point. What does not stays, for the reader to name. Which
 * kept person and gym it came from (`saved`) is this browser's own affair and stands in no file.
 */
export function fileOf(draft: Json, key = ''): Json {
  if (typeof draft === 'string' && numbers.has(key)) return readDecimal(draft) ?? draft;
  if (isList(draft)) return draft.map((item) => fileOf(item));
  if (!isRecord(draft)) return draft;
  return Object.fromEntries(
    Object.entries(draft)
      .filter(([name]) => name !== 'saved')
      .map(([name, value]) => [name, fileOf(value, name)]),
  );
}
