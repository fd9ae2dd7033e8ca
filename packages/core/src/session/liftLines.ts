import type { Band } from '../basis/index.ts';
import type { SheetFinding, SheetLeftOut, SheetLift } from './Sheet.ts';
import { wrapped } from './wrapped.ts';

/** A lift of a sheet as lines of text. */
export function liftLines(
  lift: SheetLift | SheetFinding | SheetLeftOut,
  number: number,
): readonly string[] {
  if (lift.kind === 'left-out') return leftOutLines(lift, number);
  const { minReps, maxReps } = lift.window;
  const head = [
    `${number}  ${lift.name} (${lift.equipment})`,
    `   ${minReps === maxReps ? minReps : `${minReps}–${maxReps}`} reps at ${lift.tempo}: ${lift.count}`,
  ];
  if (lift.kind === 'finding') {
    return [
      ...head,
      ...wrapped(`Start with ${lift.firstLoad.words}: ${lift.firstLoad.loading}`, '   '),
      ...wishLines(lift),
      ...lift.notes.flatMap((note) => wrapped(note, '   ')),
    ];
  }
  const steps = lift.warmUp.map(
    ({ load, reps, restSeconds, change }) =>
      `${load.words} × ${reps}: ${change}; then rest ${restSeconds} s`,
  );
  const warmUp = lift.warmUpNote ? [lift.warmUpNote] : steps;
  return [
    ...head,
    ...warmUp.flatMap((step) => wrapped(`warm up  ${step}`, '   ', '            ')),
    ...wrapped(`load     ${lift.load.words}`, '   '),
    ...wrapped(`${lift.load.loading} (${lift.changeToWork})`, '            '),
    ...lift.sets.map(
      ({ reps, chance }, index) =>
        `   set ${index + 1}    ${range(reps)}, ${Math.round(chance * 100)}% inside the window`,
    ),
    `   rest     ${lift.restSeconds} s between sets`,
    ...wishLines(lift),
    ...lift.notes.flatMap((note) => wrapped(note, '   ')),
  ];
}

function range({ low, likely, high, level }: Band): string {
  return `about ${likely} reps (${low}–${high} in ${Math.round(level * 10)} of 10)`;
}

function leftOutLines({ name, reason, exchanges }: SheetLeftOut, number: number) {
  return [
    `${number}  ${name}: left out`,
    ...wrapped(reason, '   '),
    ...exchanges.flatMap((other) =>
      wrapped(
        `instead  ${other.name} (${other.equipment}). ${other.reasons.join(' ')}`,
        '   ',
        '            ',
      ),
    ),
  ];
}

function wishLines({ fixed, refused }: SheetLift | SheetFinding): readonly string[] {
  return [
    ...fixed.flatMap((words) => wrapped(`fixed    ${words}`, '   ', '            ')),
    ...refused.flatMap((reason) => wrapped(`refused  ${reason}`, '   ', '            ')),
  ];
}
