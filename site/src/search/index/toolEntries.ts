import { calculators, type Field } from '@windlass/calculators';
import type { SearchEntry } from '../SearchEntry.ts';
import { otherWords } from './otherWords.ts';

/** Every tool by its question, and by the names of all its fields, shown or folded. */
export function toolEntries(): readonly Omit<SearchEntry, 'id'>[] {
  return calculators.map(({ id, title, question, fields }) => ({
    group: 'tools',
    path: `tools/${id}/`,
    title,
    section: '',
    text: question,
    terms: [otherWords[id] ?? '', ...Object.values(fields).flatMap(fieldWords)].join(' '),
  }));
}

function fieldWords(field: Field): readonly string[] {
  const own = [field.label, field.help];
  if (field.kind === 'rows') return [...own, ...Object.values(field.columns).flatMap(fieldWords)];
  return 'options' in field ? [...own, ...field.options.map(({ label }) => label)] : own;
}
