import { describe, expect, it } from 'vitest';
import { kg, toKg } from '../load/index.ts';
import { importLog } from './importLog.ts';
import type { LogMapping } from './LogMapping.ts';
import { movedLoad } from './movedLoad.ts';
import { readLogCsv } from './readLogCsv.ts';
import { readLogRow } from './readLogRow.ts';
import { writeLogCsv } from './writeLogCsv.ts';

/** A log as people type it: byte-order mark, semicolons, decimal commas, mixed units, help, sides. */
const typed = [
  '\uFEFFDatum;Uebung;Last;Wdh',
  '02.03.2026;Kniebeuge;102,5;5',
  '02.03.2026;Klimmzug;KG+10;6',
  '04.03.2026;Klimmzug (Maschine);-20 kg;8',
  '04.03.2026;Kurzhantel druecken;2x22,5;10',
  '06.03.2026;Bankdruecken;135lb;5',
  '06.03.2026;Rudern einarmig;L 30 / R 30;8/10',
].join('\n');
const mapping: LogMapping = {
  columns: { date: 'Datum', exercise: 'Uebung', load: 'Last', reps: 'Wdh' },
  unit: 'kg',
  dateOrder: 'day-first',
};

describe('importLog', () => {
  const { sets, unread } = importLog(typed, mapping);

  it('reads every row of a log typed by people', () => {
    expect(unread).toEqual([]);
    expect(sets.map(({ date }) => date)).toEqual([
      '2026-03-02',
      '2026-03-02',
      '2026-03-04',
      '2026-03-04',
      '2026-03-06',
      '2026-03-06',
      '2026-03-06',
    ]);
  });

  it('keeps the unit as it was written and adds up what moves', () => {
    const moved = sets.map((set) => {
      const load = movedLoad(set, { bodyWeight: kg(80) });
      return load.kind === 'load' ? toKg(load.total) : load.kind;
    });
    // 102,5 · 80 + 10 · 80 - 20 · twice 22,5 · 135 lb · 30 a side
    expect(moved).toEqual([102.5, 90, 60, 45, 61.23496995, 30, 30]);
    expect(sets[3]).toMatchObject({ counts: 'each-hand', hands: 2 });
    expect(sets[4]?.load).toEqual({ value: 135, unit: 'lb' });
  });

  it('logs both sides apart', () => {
    expect(sets.slice(5).map(({ side, reps, set }) => [side, reps, set])).toEqual([
      ['left', 8, 1],
      ['right', 10, 1],
    ]);
  });

  it('gives the same records after writing and reading them again, help as a number', () => {
    const file = writeLogCsv(sets);
    expect(file).toContain(',-20,kg,added,');
    expect(readLogCsv(file)).toEqual({ sets, unread: [] });
  });

  it('asks for the order of dates instead of guessing it', () => {
    const { dateOrder: _, ...without } = mapping;
    const { sets: none, unread: all } = importLog(typed, without);
    expect(none).toEqual([]);
    expect(all[0]).toMatchObject({ line: 2, text: '02.03.2026;Kniebeuge;102,5;5' });
    expect(all[0]?.problems[0]?.code).toBe('progress.date-order');
  });

  it('reports what it cannot read, each with line, text and reason, and reads on', () => {
    const rows = [
      'Datum;Uebung;Last;Wdh',
      '31.02.2026;Rudern;60;8',
      '02.03.2026;Rudern;schwer;8',
      '02.03.2026;Rudern;60;viele',
      '02.03.2026;;60;8',
      '02.03.2026;Rudern;60;8/10',
      '02.03.2026;Rudern;60;8;7',
      '02.03.2026;"Rudern;60;8',
      '02.03.2026;Rudern;1,234;8',
      '02.03.26;Rudern;60;8',
      ';;;',
      '',
      '02.03.2026;"Rudern; eng";60;8',
    ];
    const result = importLog(rows.join('\r\n'), mapping);
    expect(result.sets).toHaveLength(1);
    expect(result.sets[0]?.exercise).toBe('Rudern; eng');
    expect(result.unread.map(({ line, problems }) => [line, problems[0]?.code])).toEqual([
      [2, 'progress.no-such-date'],
      [3, 'load.not-a-load'],
      [4, 'progress.not-reps'],
      [5, 'progress.no-exercise'],
      [6, 'progress.sides-unclear'],
      [7, 'progress.too-many-cells'],
      [8, 'progress.text-after-quote'],
      [9, 'load.ambiguous-mark'],
      [10, 'progress.short-year'],
    ]);
    for (const { line, text } of result.unread) expect(text).toBe(rows[line - 1]);
  });

  it('names every problem of a row, not only the first', () => {
    const { unread: rows } = importLog('a;b;c;d\nx;y;z;w', {
      columns: { date: 0, exercise: 1, load: 2, reps: 3 },
      unit: 'kg',
    });
    expect(rows[0]?.problems.map(({ path }) => path[0])).toEqual(['date', 'load', 'reps']);
  });

  it('says which column is missing and which there are', () => {
    const { unread: rows } = importLog(typed, {
      ...mapping,
      columns: { ...mapping.columns, reps: 'Reps' },
    });
    expect(rows[0]?.problems[0]?.message).toBe(
      'There is no column Reps; the table has Datum, Uebung, Last, Wdh.',
    );
  });

  it('reads effort, reserve, unit by row, rest, tempo, and maps names', () => {
    const { sets: read } = importLog(
      'when,what,how much,u,n,effort,rest,tempo\n2026-03-02,Pull,95,lb,8,8,90,3010\n2026-03-02,Pull,45,kg,7,10,,',
      {
        columns: {
          date: 'when',
          exercise: 'what',
          load: 'how much',
          unit: 'u',
          reps: 'n',
          effort: 'effort',
          rest: 'rest',
          tempo: 'tempo',
        },
        unit: 'kg',
        exercises: { Pull: 'cable-pulldown' },
      },
    );
    expect(read).toEqual([
      {
        date: '2026-03-02',
        exercise: 'cable-pulldown',
        set: 1,
        load: { value: 95, unit: 'lb' },
        counts: 'total',
        reps: 8,
        end: { kind: 'reserve', repsLeft: 2 },
        tempo: '3010',
        restSeconds: 90,
      },
      {
        date: '2026-03-02',
        exercise: 'cable-pulldown',
        set: 2,
        load: { value: 45, unit: 'kg' },
        counts: 'total',
        reps: 7,
        end: { kind: 'reserve', repsLeft: 0 },
      },
    ]);
  });

  const simple: LogMapping = {
    columns: { date: 0, exercise: 1, load: 2, reps: 3 },
    unit: 'kg',
    hasHeader: false,
    separator: ',',
  };

  it('reads a table without a header by numbers of columns, of any width', () => {
    const { sets, unread } = importLog('2026-03-02,Row,60,8\n2026-03-02,Row,60,8,more', simple);
    expect(unread).toEqual([]);
    expect(sets).toHaveLength(2);
    const [shorter] = importLog('2026-03-02,Row', simple).unread;
    expect(shorter?.problems.map(({ path }) => path[0])).toEqual(['load', 'reps']);
  });

  it('names every column that is not there', () => {
    const missing = (columns: LogMapping['columns'], hasHeader = true) =>
      importLog('a,b,c,d\n2026-03-02,Row,60,8', { ...simple, hasHeader, columns }).unread;
    const columns = { date: 0, exercise: 1, load: 4, reps: -1 };
    expect(missing(columns)).toMatchObject([
      {
        line: 1,
        text: 'a,b,c,d',
        problems: [
          {
            code: 'progress.no-such-column',
            path: ['columns', 'load'],
            params: { column: 4 },
            received: 4,
          },
          { path: ['columns', 'reps'], params: { column: -1 } },
        ],
      },
    ]);
    expect(missing({ ...simple.columns, reps: 3 })).toEqual([]);
    const [named] = missing({ ...simple.columns, reps: 'Reps' }, false);
    expect(named).toMatchObject({ line: 1, text: '' });
    expect(named?.problems[0]?.message).toBe('There is no column Reps; the table has no header.');
  });

  it('keeps broken rows beside a missing column, in the order of the file', () => {
    const text = 'a,b,c,d\n2026-03-02,"Row,60,8';
    const { sets, unread } = importLog(text, {
      ...simple,
      hasHeader: true,
      columns: { ...simple.columns, reps: 9 },
    });
    expect(sets).toEqual([]);
    expect(unread.map(({ line, problems }) => [line, problems[0]?.code])).toEqual([
      [1, 'progress.no-such-column'],
      [2, 'progress.quote-not-closed'],
    ]);
  });

  it('takes blanks off cells and headers, and leaves a note as it is', () => {
    const { sets } = importLog(' Day ;Lift;Load;Reps;Note\n 2026-03-02 ; Row ; 60 ; 8 ; seat 4 ', {
      columns: { date: 'Day', exercise: 'Lift', load: 'Load', reps: 'Reps', note: 'Note' },
      unit: 'kg',
    });
    expect(sets).toMatchObject([
      { date: '2026-03-02', exercise: 'Row', reps: 8, note: ' seat 4 ' },
    ]);
  });

  it('says how many cells a row has and how many columns there are', () => {
    const row = '2026-03-02,Row,60,8, ,7';
    const { unread } = importLog(`d,e,l,r\n${row}\n2026-03-02,Row,60,8, ,`, {
      ...simple,
      hasHeader: true,
    });
    expect(unread).toMatchObject([
      {
        problems: [
          {
            code: 'progress.too-many-cells',
            path: [],
            params: { cells: 6, columns: 4 },
            received: row,
          },
        ],
      },
    ]);
  });

  it('numbers sets within exercise, date and side, on from a number that is written', () => {
    const rows = [
      '2026-03-02,Row,60,8,,',
      '2026-03-02,Press,60,8,,',
      '2026-03-02,Row,60,7,,',
      '2026-03-03,Row,60,7,,',
      '2026-03-03,Row,60,7,5,',
      '2026-03-03,Row,60,7,,',
      '2026-03-03,Row,60,7,,left',
    ];
    const columns = { ...simple.columns, set: 4, side: 5 };
    const { sets } = importLog(rows.join('\n'), { ...simple, columns });
    expect(sets.map(({ set }) => set)).toEqual([1, 1, 2, 1, 5, 6, 1]);
  });

  it('reads all that a row can hold', () => {
    const columns = {
      ...simple.columns,
      hands: 4,
      body: 5,
      tags: 6,
      equipment: 7,
      ended: 8,
      reserve: 9,
      counts: 10,
    };
    const row = '2026-03-02,Row,20,8,1,82 kg, new-shoes  light ,rack,more,2,each-hand';
    expect(importLog(row, { ...simple, columns }).sets).toEqual([
      {
        date: '2026-03-02',
        exercise: 'Row',
        set: 1,
        load: { value: 20, unit: 'kg' },
        counts: 'each-hand',
        hands: 1,
        bodyWeight: { value: 82, unit: 'kg' },
        reps: 8,
        end: { kind: 'more', atLeast: 2 },
        tags: ['new-shoes', 'light'],
        equipment: 'rack',
      },
    ]);
  });

  it.each([
    ['set', '0', 'progress.not-a-number'],
    ['set', '1001', 'progress.not-a-number'],
    ['hands', '3', 'progress.not-a-number'],
    ['hands', '0', 'progress.not-a-number'],
    ['rest', '86401', 'progress.not-a-number'],
    ['side', 'both', 'progress.unknown-side'],
    ['ended', 'tired', 'progress.unknown-end'],
    ['body', 'heavy', 'load.not-a-load'],
    ['exercise', '', 'progress.no-exercise'],
  ] as const)('refuses a %s of %j and names the column', (field, cell, code) => {
    const columns = { ...simple.columns, [field]: 4 };
    const { sets, unread } = importLog(`2026-03-02,Row,20,8,${cell}`, { ...simple, columns });
    expect(sets).toEqual([]);
    expect(unread[0]?.problems).toHaveLength(1);
    expect(unread[0]?.problems[0]).toMatchObject({
      code,
      path: [field],
      received: cell,
    });
  });

  it('refuses a tempo that is none, and names the column of every problem', () => {
    const columns = { ...simple.columns, tempo: 4 };
    const { unread } = importLog('2026-03-02,Row,20,8,slow', { ...simple, columns });
    const problems = unread[0]?.problems ?? [];
    expect(problems.length).toBeGreaterThan(0);
    for (const problem of problems) {
      expect(problem.path).toEqual(['tempo']);
      expect(problem.code).toMatch(/^tempo\./);
    }
  });

  it.each([
    ['set', '1000'],
    ['rest', '0'],
    ['rest', '86400'],
    ['hands', '2'],
  ])('takes a %s of %s', (field, cell) => {
    const columns = { ...simple.columns, [field]: 4 };
    expect(importLog(`2026-03-02,Row,20,8,${cell}`, { ...simple, columns }).sets).toHaveLength(1);
  });
});

describe('what a row leaves open', () => {
  const columns = { date: 0, exercise: 1, load: 2, reps: 3 };
  const plain: LogMapping = { columns, unit: 'kg', hasHeader: false, separator: ',' };

  it('is nothing in rows of blanks, and no tempo in a row that is too short for one', () => {
    const text = '2026-03-02,Row,60,8\n , , , \n2026-03-03,Row,60,8';
    const { sets, unread } = importLog(text, { ...plain, columns: { ...columns, tempo: 4 } });
    expect(unread).toEqual([]);
    expect(sets).toHaveLength(2);
  });

  it('numbers rows of two sides apart', () => {
    const text = '2026-03-02,Row,60,8,left\n2026-03-02,Row,60,8,right\n2026-03-02,Row,60,7,left';
    const { sets } = importLog(text, { ...plain, columns: { ...columns, side: 4 } });
    expect(sets.map(({ set }) => set)).toEqual([1, 1, 2]);
  });

  it('gives back the count whose side is not known', () => {
    const { unread } = importLog('2026-03-02,Row,60,8/10', plain);
    expect(unread[0]?.problems[0]?.received).toBe('8/10');
  });

  it('takes commas for separators where no mark divides the header', () => {
    const all = { date: 0, exercise: 0, load: 0, reps: 0 };
    const { unread } = importLog('x\n1,2', { columns: all, unit: 'kg' });
    expect(unread[0]?.problems[0]?.code).toBe('progress.too-many-cells');
  });

  it('takes kilograms for a load of our own format without a unit', () => {
    const columnNames =
      'date,exercise,set,side,load,unit,counts,hands,body,reps,ended,reserve,tempo,rest,tags,equipment,note';
    const { sets } = readLogCsv(`${columnNames}\n2026-03-02,Row,1,,60,,,,,8,,,,,,,`);
    expect(sets[0]?.load).toEqual({ value: 60, unit: 'kg' });
  });

  it('is left out of a set, and asked for where it has to be known', () => {
    const read = readLogRow({ date: '2026-03-02', exercise: 'Row', load: '60', reps: '8' }, plain);
    expect(read).toStrictEqual({
      ok: true,
      value: [
        {
          date: '2026-03-02',
          exercise: 'Row',
          load: { value: 60, unit: 'kg' },
          counts: 'total',
          reps: 8,
        },
      ],
    });
    const nothing = readLogRow({}, plain);
    expect(nothing.ok ? [] : nothing.problems).toMatchObject([
      { code: 'progress.not-a-date', received: '' },
      { code: 'progress.no-exercise', received: '' },
      { code: 'load.empty' },
      { code: 'progress.not-reps', received: '' },
    ]);
  });
});

describe('a name that every object inherits', () => {
  it('stays the name of the exercise', () => {
    const { sets } = importLog('Day,Lift,Load,Reps\n2027-03-11,constructor,50 kg,10', {
      columns: { date: 'Day', exercise: 'Lift', load: 'Load', reps: 'Reps' },
      unit: 'kg',
      exercises: { Row: 'cable-row' },
    });
    expect(sets.map(({ exercise }) => exercise)).toEqual(['constructor']);
  });
});
