import type { Calculator } from '../contract/Calculator.ts';
import type { Texts } from '../fields/Field.ts';
import type { AttributeProblem } from './AttributeProblem.ts';
import { attributeOf } from './attributeOf.ts';
import { fieldAttributes } from './fieldAttributes.ts';
import { unknownAttributes } from './unknownAttributes.ts';
import { elementWords } from './words.ts';

/** The texts that attributes give to fields, and those attributes that give none. */
export interface ReadAttributes {
  readonly texts: Texts;
  readonly problems: readonly AttributeProblem[];
}

/**
 * Reads attributes, each with its value or `null` where it was taken away. A value that the field
 * cannot take leaves the default of the field; one of a field that is not shown is not looked at
 * before it is. `base` are the texts of all other fields.
 */
export function readAttributes(
  calculator: Calculator,
  attributes: Readonly<Record<string, string | null>>,
  base: Texts = calculator.defaults,
): ReadAttributes {
  const set = fieldAttributes(calculator, Object.keys(attributes));
  const given = Object.fromEntries(
    set.map(({ field, attribute }) => [
      field,
      attributes[attribute] ?? calculator.defaults[field] ?? '',
    ]),
  );
  const answer = calculator.answer({ ...base, ...given });
  const found = answer.kind === 'unreadable' ? answer.problems : {};
  const refused = set.flatMap(({ field, attribute }) => {
    const value = attributes[attribute] ?? null;
    const [problem] = found[field] ?? [];
    return problem && value !== null ? [{ field, attribute, value, problem }] : [];
  });
  const texts = {
    ...given,
    ...Object.fromEntries(refused.map(({ field }) => [field, calculator.defaults[field] ?? ''])),
  };
  const say = (attribute: string, value: string, code: string, message: string) => ({
    calculator: calculator.id,
    attribute,
    value,
    code,
    message,
  });
  const known = Object.keys(calculator.fields).map(attributeOf);
  const unknown = unknownAttributes(calculator, Object.keys(attributes)).flatMap((name) => {
    const value = attributes[name] ?? null;
    const message = elementWords.unknownAttribute(name, known);
    return value === null ? [] : [say(name, value, 'element.unknown-attribute', message)];
  });
  const bad = refused.map(({ attribute, value, problem }) =>
    say(attribute, value, problem.code, elementWords.refused(attribute, value, problem.message)),
  );
  return { texts, problems: [...bad, ...unknown] };
}
