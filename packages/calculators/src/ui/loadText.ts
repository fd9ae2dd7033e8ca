import type { Unit } from '@windlass/core/load';

/** A load text as a control shows it: the number as typed, and the unit beside it. */
export interface LoadParts {
  readonly number: string;
  readonly unit: Unit;
}

/** Splits `62,5 kg` at its unit; a text without one is in `unit`. Any other text stays whole. */
export function loadParts(text: string, unit: Unit): LoadParts {
  const match = /^(.*?)\s*(kg|lb)s?\.?\s*$/is.exec(text);
  if (!match) return { number: text, unit };
  return { number: match[1] ?? '', unit: match[2]?.toLowerCase() === 'kg' ? 'kg' : 'lb' };
}

/** The text of a number as typed and a unit; empty where no number stands. */
export function joinLoad({ number, unit }: LoadParts): string {
  return number.trim() === '' ? '' : `${number}${unit}`;
}
