import MiniSearch from 'minisearch';
import { describe, expect, it } from 'vitest';
import { find } from './find.ts';
import { indexOptions } from './indexOptions.ts';
import type { Group, SearchEntry } from './SearchEntry.ts';

const entry = (group: Group, title: string, text: string, rest: Partial<SearchEntry> = {}) => ({
  group,
  title,
  text,
  path: title,
  section: '',
  terms: '',
  ...rest,
});

const entries: readonly Omit<SearchEntry, 'id'>[] = [
  entry('tools', 'Seconds at a tempo', 'How long is a set?', { terms: 'Tempo time under tension' }),
  entry('tools', 'Warm-up ramp', 'Which few sets come before the work?'),
  entry('guides', 'Slow reps', 'What slow is for.', { section: 'Tempo and load' }),
  entry('pages', 'For developers', 'planSession makes a whole session.', { section: 'A session' }),
  entry('reference', 'planSession()', 'A whole session for one person in one gym.'),
  entry('reference', 'Tempo', 'Seconds of the four parts of a repetition.'),
  entry('reference', 'parseTempo()', 'Reads a tempo that a person wrote.'),
  entry('reference', 'LightWeek', 'A week of less work.', { terms: 'repsInReserve' }),
];

const index = new MiniSearch<SearchEntry>(indexOptions);
index.addAll(entries.map((one, id) => ({ id, ...one })));

const titles = (query: string) =>
  find(index, query).byGroup.map(({ group, hits }) => [group, ...hits.map(({ title }) => title)]);

describe('find', () => {
  it.each(['planSession', 'plansession', 'planSession()', ' planSession '])(
    'puts the name %s of the library before everything',
    (query) => {
      expect(titles(query)[0]).toEqual(['reference', 'planSession()']);
    },
  );

  it('takes a word of the trade for that, though the library has a type of the name', () => {
    expect(titles('tempo').map(([group]) => group)).toEqual(['tools', 'guides', 'reference']);
    expect(titles('tempo')[2]?.[1]).toBe('Tempo');
    expect(titles('Tempo')[0]).toEqual(['reference', 'Tempo', 'parseTempo()']);
  });

  it('knows the parts of a name, words half written, and what only the properties say', () => {
    expect(titles('parse')).toEqual([['reference', 'parseTempo()']]);
    expect(titles('warm')).toEqual([['tools', 'Warm-up ramp']]);
    expect(titles('repsInReserve')).toEqual([['reference', 'LightWeek']]);
  });

  it.each([
    ['a letter wrong', 'secunds', 'Seconds at a tempo'],
    ['a letter missing', 'plansesion', 'planSession()'],
    ['two letters changed over', 'tesnion', 'Seconds at a tempo'],
  ])('forgives %s', (_, query, title) => {
    expect(titles(query).flat()).toContain(title);
  });

  it('takes words as they are written where something has them', () => {
    expect(titles('reps').flat()).not.toContain('Seconds at a tempo');
  });

  it('gives places with a part of the words, and says so, where none has all', () => {
    expect(find(index, 'ramp xylophone')).toMatchObject({ isPartly: true, count: 1 });
    expect(find(index, 'tempo slow')).toMatchObject({ isPartly: false, count: 1 });
  });

  it.each(['', '  ', '()', '–', 'zzqx'])('finds nothing for “%s”', (query) => {
    expect(find(index, query)).toEqual({ count: 0, isPartly: false, byGroup: [] });
  });
});
