import type { Fields, InputOf, Texts } from '../fields/Field.ts';
import { fieldText, loadText } from '../fields/fieldText.ts';
import type { Answer, ShownResult } from './Answer.ts';
import type { Calculator } from './Calculator.ts';
import type { Definition } from './Definition.ts';
import { fetchRest } from './fetchRest.ts';
import { isShown } from './isShown.ts';
import { readTexts } from './readTexts.ts';

/**
 * Makes a calculator of its definition. From the fields come the form, the address and the
 * schema; from `compute` and what is said about its result comes the answer.
 */
export function defineCalculator<const F extends Fields, Result>(
  definition: Definition<F, Result>,
): Calculator {
  const { id, title, question, fields, groups, stepLoad, newRow } = definition;
  const defaults: Texts = Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [name, fieldText(field, field.default)]),
  );

  function answer(texts: Texts): Answer {
    const read = readTexts<F>(fields, { ...defaults, ...texts });
    if (read.kind === 'unreadable') return read;
    const computed = definition.compute(read.input);
    if (computed.kind === 'none') return computed;
    return shown(definition, read.input, computed.result);
  }

  function step(name: string, texts: Texts, direction: 1 | -1): string | null {
    const all = { ...defaults, ...texts };
    const field = fields[name];
    if (!stepLoad || !field || !isShown(field, all)) return null;
    const read = readTexts<F>(fields, all);
    const next = read.kind === 'input' ? stepLoad(name, read.input, direction) : null;
    return next ? loadText(next) : null;
  }

  function row(name: string, texts: Texts): readonly string[] | null {
    const field = fields[name];
    const read = readTexts<F>(fields, { ...defaults, ...texts });
    if (!newRow || field?.kind !== 'rows' || read.kind !== 'input') return null;
    const values = newRow(name, read.input);
    if (values === null) return null;
    return Object.entries(field.columns).map(([of, column]) => fieldText(column, values[of]));
  }

  const face = { id, title, question, fields, groups, defaults };
  return { ...face, fetchRest, answer, stepLoad: step, newRow: row };
}

function shown<F extends Fields, Result>(
  definition: Definition<F, Result>,
  input: InputOf<F>,
  result: Result,
): ShownResult {
  return {
    kind: 'result',
    headline: definition.headline(input, result),
    certainty: definition.certainty(input, result),
    why: definition.why(input, result),
    cautions: definition.cautions(input, result),
    sources: definition.sources(input, result),
    next: definition.next(input, result),
    snippet: definition.snippet(input, result),
    view: () => definition.view(input, result),
    details: () => definition.details?.(input, result) ?? null,
  };
}
