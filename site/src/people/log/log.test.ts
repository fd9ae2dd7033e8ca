import type { LoggedSet } from '@windlass/core/progress';
import { writeLogCsv, writeLogJson } from '@windlass/core/progress';
import { readGym } from '@windlass/core/schema';
import { describe, expect, it } from 'vitest';
import boathouse from '../../../../examples/boathouse/gym.json';
import { endWords } from './endWords.ts';
import { fileName } from './fileName.ts';
import { loadWords } from './loadWords.ts';
import { choiceFor, namedSets } from './NameChoice.ts';
import { newSessions } from './newSessions.ts';
import { openLogFile } from './openLogFile.ts';
import { firstChoice, mappingOf, setColumn } from './TableChoice.ts';

const set: LoggedSet = {
  date: '2027-03-15',
  exercise: 'cable-pulldown',
  set: 1,
  load: { value: 52.5, unit: 'kg' },
  counts: 'stack',
  reps: 10,
};

describe('openLogFile', () => {
  it.each([
    ['CSV', writeLogCsv([set])],
    ['JSON', writeLogJson([set])],
    ['CSV with a byte-order mark', `\uFEFF${writeLogCsv([set])}`],
  ])('knows a log that was saved here as %s', (_, text) => {
    expect(openLogFile(text)).toEqual({ kind: 'own', log: { sets: [set], unread: [] } });
  });

  it('takes anything else for a table, and nothing for empty', () => {
    expect(openLogFile('Day;Lift;Load;Reps\n2027-03-15;Row;50;8').kind).toBe('table');
    expect(openLogFile(' \r\n').kind).toBe('empty');
    expect(openLogFile('Day;Lift').kind).toBe('empty');
  });
});

describe('the choices about a table', () => {
  const opened = openLogFile(
    'Day;Lift;Load;Reps;Left\n2027-03-15;Row;50,5;8;2\n2027-03-16;Row;50;8;1',
  );
  if (opened.kind !== 'table') throw new Error(opened.kind);
  const { preview } = opened;

  it('start with what the table leaves no doubt about, and say what is missing', () => {
    const choice = firstChoice(preview, 'lb');
    expect(choice).toMatchObject({ columns: ['date', 'exercise', 'load', '', ''], unit: 'lb' });
    expect(mappingOf(choice, preview)).toEqual({ missing: ['reps'] });
  });

  it('put a field into one column only', () => {
    const first = setColumn(firstChoice(preview, 'kg'), 4, 'reps');
    const second = setColumn(first, 3, 'reps');
    expect(second.columns).toEqual(['date', 'exercise', 'load', 'reps', '']);
    expect(mappingOf(setColumn(second, 4, 'reserve'), preview)).toMatchObject({
      columns: { date: 0, exercise: 1, load: 2, reps: 3, reserve: 4 },
      separator: ';',
      unit: 'kg',
    });
  });
});

describe('the names in a log', () => {
  const gym = readGym(boathouse);
  const equipment = gym.ok ? gym.value.equipment : [];

  it('stand for the exercise that is called so, on the thing called like it or the only one', () => {
    expect(choiceFor('leg press', equipment)).toEqual({
      exercise: 'leg-press',
      equipment: 'leg-press',
    });
    expect(choiceFor('One-arm dumbbell row', equipment)).toMatchObject({ equipment: 'dumbbells' });
    expect(choiceFor('Cable curl', equipment)).toEqual({ exercise: 'cable-curl', equipment: '' });
    expect(choiceFor('Rudern', equipment)).toEqual({ exercise: '', equipment: '' });
  });

  it('leave the equipment that a set names', () => {
    const sets = [
      { ...set, exercise: 'Zug' },
      { ...set, exercise: 'Zug', equipment: 'cable' },
    ];
    const choices = { Zug: { exercise: 'cable-pulldown', equipment: 'pulldown' } };
    const named = namedSets(sets, choices);
    expect(named.map((one) => [one.exercise, one.equipment])).toEqual([
      ['cable-pulldown', 'pulldown'],
      ['cable-pulldown', 'cable'],
    ]);
    expect(namedSets(sets, {})).toEqual(sets);
  });
});

describe('newSessions', () => {
  const saved = () => ({ id: 's', revision: 'r', past: [], changedAt: '2027-03-16T00:00:00Z' });

  it('makes one session a day, oldest first, of what the log does not have', () => {
    const sets = [set, { ...set, set: 2 }, { ...set, date: '2027-03-01' }];
    const first = newSessions(sets, [], 'a', saved);
    expect(first.sessions.map((one) => [one.date, one.sets.length])).toEqual([
      ['2027-03-01', 1],
      ['2027-03-15', 2],
    ]);
    expect(newSessions(sets, first.sessions, 'a', saved)).toEqual({ sessions: [], already: 3 });
    const more = newSessions([...sets, { ...set, set: 3 }], first.sessions, 'a', saved);
    expect([more.sessions.length, more.already]).toEqual([1, 3]);
  });
});

describe('the words of a set', () => {
  it.each([
    [{}, '52.5 kg on the stack'],
    [{ counts: 'total' as const }, '52.5 kg'],
    [{ counts: 'each-hand' as const, side: 'left' as const }, '52.5 kg each hand left'],
    [{ counts: 'added' as const, load: { value: -20, unit: 'kg' as const } }, '20 kg help'],
    [{ counts: 'added' as const, load: { value: 10, unit: 'lb' as const } }, '10 lb added'],
  ])('say the load of %j', (change, words) => {
    expect(loadWords({ ...set, ...change })).toBe(words);
  });

  it('say how it ended', () => {
    expect(endWords(set)).toBe('not noted');
    expect(endWords({ ...set, end: { kind: 'failure' } })).toBe('at failure');
    expect(endWords({ ...set, end: { kind: 'reserve', repsLeft: 1.5 } })).toBe('1.5 left');
    expect(endWords({ ...set, end: { kind: 'more', atLeast: 2 } })).toBe('2 or more left');
  });
});

describe('fileName', () => {
  it.each([
    ['Winch hand', 'winch-hand'],
    ['Žofie / 2', 'žofie-2'],
    ['***', 'log'],
  ])('makes of %s %s', (name, file) => {
    expect(fileName(name)).toBe(file);
  });
});
