import type { Calculator } from '../contract/Calculator.ts';
import { fieldAttributes } from './fieldAttributes.ts';

/** What the element itself reads, `units` for those without any too, and what has another name in scripts. */
const known = new Set(['calculator', 'query', 'tools', 'units', 'class', 'exportparts', 'is']);
for (const name in HTMLElement.prototype) known.add(name.toLowerCase());

/**
 * The attributes among these that neither HTML nor the calculator knows: probably misspelled.
 * Names of frameworks, of data and of handlers are passed over.
 */
export function unknownAttributes(
  calculator: Pick<Calculator, 'fields'>,
  names: readonly string[],
): readonly string[] {
  const set = new Set(fieldAttributes(calculator, names).map(({ attribute }) => attribute));
  return names.filter(
    (name) =>
      /^(?!data-|aria-|on|v-|x-|ng-)[a-z-]+$/.test(name) && !known.has(name) && !set.has(name),
  );
}
