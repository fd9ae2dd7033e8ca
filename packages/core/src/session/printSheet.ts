import { liftLines } from './liftLines.ts';
import type { AskFirstSheet, SessionSheet, SheetLimit, SheetNext, TooShortSheet } from './Sheet.ts';
import { wrapped } from './wrapped.ts';

/** A sheet as plain text for a terminal or a message, lines of at most 78 characters. */
export function printSheet(sheet: SessionSheet | AskFirstSheet | TooShortSheet): string {
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
  if (sheet.kind === 'too-short') {
    const lines = wrapped(sheet.message, '  ');
    return [`${head}: too little time`, '', ...lines, '', ...cautionLines(sheet.cautions)].join(
      '\n',
    );
  }
  const { total, change, warmUp, work, rest } = sheet.minutes;
  const minutes = (value: number) => Math.round(value);
  return [
    `${head}, ${sheet.gym}`,
    `About ${minutes(total)} minutes: changes ${minutes(change)}, warm-up ${minutes(warmUp)}, work ${minutes(work)}, rests ${minutes(rest)}`,
    'No rest is counted after the last set of a lift.',
    ...(sheet.limit ? limitLines(sheet.limit) : []),
    ...sheet.refused.flatMap((reason) => wrapped(`Not followed: ${reason}`, '')),
    '',
    ...sheet.lifts.flatMap((lift, index) => [...liftLines(lift, index + 1), '']),
    ...notForLines(sheet),
    ...(sheet.next ? [...nextLines(sheet.next), ''] : []),
    ...cautionLines(sheet.cautions),
    '',
    'Stop at any of these',
    ...sheet.stop.flatMap((rule) => wrapped(rule, '  ')),
  ].join('\n');
}

function limitLines({
  minutesAtMost,
  withoutMinutes,
  dropped,
  turns,
}: SheetLimit): readonly string[] {
  if (dropped.length === 0) return [`It fits into the ${minutesAtMost} minutes as it is.`];
  return [
    ...wrapped(
      `To fit into ${minutesAtMost} minutes instead of ${Math.ceil(withoutMinutes)}, the least useful is left out:`,
      '',
    ),
    ...dropped.flatMap(({ message, minutesSaved }) =>
      wrapped(`${message} Saves ${tenths(minutesSaved)} min.`, '  '),
    ),
    ...(turns === undefined ? [] : wrapped(turns, '')),
  ];
}

/** For whom going on past failure is not planned: once, however many lifts do. */
function notForLines({ lifts }: SessionSheet): readonly string[] {
  const chains = lifts.flatMap((lift) =>
    lift.kind === 'planned' && lift.chain ? [lift.chain] : [],
  );
  const [first] = chains;
  if (!first) return [];
  const words = `Going on past failure is not for everybody. It is not planned where: ${first.notFor.join(' ')}`;
  return [...wrapped(words, ''), ''];
}

function nextLines({ date, isFixed, earliest, likely, cautious, notes }: SheetNext) {
  const time = ({ date: day, hours }: SheetNext['likely']) => `${day} (${Math.ceil(hours)} h)`;
  return [
    `Next for these muscles: ${date}${isFixed ? ' (fixed)' : ''}`,
    ...wrapped(
      `Ready by, at the same time of day: earliest ${time(earliest)}, likely ${time(likely)}, cautious ${time(cautious)}`,
      '  ',
    ),
    ...notes.flatMap((note) => wrapped(note, '  ')),
  ];
}

function tenths(value: number): number {
  return Math.round(10 * value) / 10;
}

function cautionLines(cautions: SessionSheet['cautions']): readonly string[] {
  return cautions.flatMap(({ level, what, why, instead, ask }) => [
    ...wrapped(`${level.toUpperCase()}  ${what} ${why}`, '', '  '),
    ...wrapped(instead, '  '),
    ...(ask.length > 0 ? wrapped(`Ask: ${ask.join(', ').replaceAll('-', ' ')}.`, '  ') : []),
  ]);
}
