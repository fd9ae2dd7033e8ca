import type { Band } from '../basis/index.ts';
import type { AskFirstSheet, SessionSheet, SheetFinding, SheetLift } from './Sheet.ts';

const WIDTH = 78;

/** A sheet as plain text for a terminal or a message, lines of at most 78 characters. */
export function printSheet(sheet: SessionSheet | AskFirstSheet): string {
  const head = `${sheet.client}, ${sheet.date}`;
  if (sheet.kind === 'ask-first') {
    return [
      `${head}: ask first`,
      '',
      ...sheet.reasons.flatMap((reason) => wrapped(reason, '  ')),
      ...wrapped(`Ask: ${sheet.ask.join(', ').replaceAll('-', ' ')}.`, '  '),
      '',
      ...cautionLines(sheet.cautions),
    ].join('\n');
  }
  const { total, change, warmUp, work, rest } = sheet.minutes;
  const minutes = (value: number) => Math.round(value);
  return [
    `${head}, ${sheet.gym}`,
    `About ${minutes(total)} minutes: changes ${minutes(change)}, warm-up ${minutes(warmUp)}, work ${minutes(work)}, rests ${minutes(rest)}`,
    '',
    ...sheet.lifts.flatMap((lift, index) => [
      ...(lift.kind === 'left-out'
        ? [`${index + 1}  ${lift.name}: left out`, ...wrapped(lift.reason, '   ')]
        : liftLines(lift, index + 1)),
      '',
    ]),
    ...cautionLines(sheet.cautions),
    '',
    'Stop at any of these',
    ...sheet.stop.flatMap((rule) => wrapped(rule, '  ')),
  ].join('\n');
}

function liftLines(lift: SheetLift | SheetFinding, number: number): readonly string[] {
  const { minReps, maxReps } = lift.window;
  const head = [
    `${number}  ${lift.name} (${lift.equipment})`,
    `   ${minReps === maxReps ? minReps : `${minReps}–${maxReps}`} reps at ${lift.tempo}: ${lift.count}`,
  ];
  if (lift.kind === 'finding') {
    return [
      ...head,
      ...wrapped(`Start with ${lift.firstLoad.words}: ${lift.firstLoad.loading}`, '   '),
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
    ...lift.notes.flatMap((note) => wrapped(note, '   ')),
  ];
}

function range({ low, likely, high, level }: Band): string {
  return `about ${likely} reps (${low}–${high} in ${Math.round(level * 10)} of 10)`;
}

function cautionLines(cautions: SessionSheet['cautions']): readonly string[] {
  return cautions.flatMap(({ level, what, why, instead, ask }) => [
    ...wrapped(`${level.toUpperCase()}  ${what} ${why}`, '', '  '),
    ...wrapped(instead, '  '),
    ...(ask.length > 0 ? wrapped(`Ask: ${ask.join(', ').replaceAll('-', ' ')}.`, '  ') : []),
  ]);
}

/** Breaks a text at spaces; an indent for the first line and for those after it. */
function wrapped(text: string, first: string, later = first): readonly string[] {
  const lines: string[] = [];
  let line = first;
  let isEmpty = true;
  for (const word of text.split(' ')) {
    if (!isEmpty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = later;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return [...lines, line];
}
