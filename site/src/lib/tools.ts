import { type Calculator, findCalculator } from '@windlass/calculators';
import { href } from './href.ts';

/** The calculator of this id. Throws on an unknown id, so that a page with a wrong one is not built. */
export function toolOf(id: string): Calculator {
  const calculator = findCalculator(id);
  if (calculator === undefined) throw new RangeError(`toolOf: no calculator named ${id}`);
  return calculator;
}

/** The folder of all tools. */
export const toolsFolder = href('/tools/');

/** The address of a tool's page, with values for its fields. */
export function toolHref(id: string, texts: Readonly<Record<string, string>> = {}): string {
  const query = new URLSearchParams(texts).toString();
  return `${toolsFolder}${id}/${query === '' ? '' : `?${query}`}`;
}
