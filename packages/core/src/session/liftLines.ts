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
        `   set ${index + 1}    about ${counted(reps)}, ${Math.round(chance * 100)} % inside the window`,
    ),
    ...chainLines(lift),
    ...restLines(lift, number),
    ...wishLines(lift),
    ...lift.notes.flatMap((note) => wrapped(note, '   ')),
  ];
}

function counted({ low, likely, high, level }: Band): string {
  return `${likely} reps (${low}–${high} in ${Math.round(level * 10)} of 10)`;
}

function range({ low, likely, high, level }: Band): string {
  const [from, middle, to] = [low, likely, high].map(Math.round);
  return `${middle} (${from}–${to} in ${Math.round(level * 10)} of 10)`;
}

function chainLines({ chain }: SheetLift): readonly string[] {
  if (!chain) return [];
  const { stages, needs, notes } = chain;
  const said = (words: string) => wrapped(words, '            ');
  return [
    ...wrapped('then     the last set goes on past the rep that fails, with the same load:', '   '),
    ...stages.flatMap(({ words, count, seconds }) =>
      said(`${words}; ${count ? `about ${range(count)}, ` : ''}about ${range(seconds)} s`),
    ),
    ...needs.flatMap((need) => said(`Needed: ${need}`)),
    ...notes.flatMap(said),
  ];
}

function restLines({ join, restSeconds, sets }: SheetLift, number: number): readonly string[] {
  if (!join) return sets.length > 1 ? [`   rest     ${restSeconds} s between sets`] : [];
  const { place, transitionSeconds, waitSeconds, notes } = join;
  const onwards = `${transitionSeconds} s, then a set of ${number + 1}`;
  const back =
    waitSeconds === undefined
      ? `one round with ${number - 1}`
      : `${waitSeconds} s, then the next round with ${number - 1}`;
  return [
    `   rest     ${place === 'first' ? onwards : back}`,
    ...notes.flatMap((note) => wrapped(note, '            ')),
  ];
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

function wishLines({
  chosenFor = [],
  fixed,
  refused,
}: SheetLift | SheetFinding): readonly string[] {
  return [
    ...chosenFor.flatMap((words) => wrapped(words, '   ')),
    ...fixed.flatMap((words) => wrapped(`fixed    ${words}`, '   ', '            ')),
    ...refused.flatMap((reason) => wrapped(`refused  ${reason}`, '   ', '            ')),
  ];
}
