import type { Calculator } from '../contract/Calculator.ts';

/** What a browser keeps between visits: `localStorage`, or anything like it. */
export interface Memory {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, value: string) => void;
}

/** The query with remembered choices for fields that it does not name. */
export function recall(calculator: Calculator, query: string, memory: Memory): string {
  const parameters = new URLSearchParams(query);
  for (const [name, field] of Object.entries(calculator.fields)) {
    if (field.kind !== 'choice' || !field.remember || parameters.has(name)) continue;
    const kept = read(memory, field.remember);
    if (kept !== null && field.options.some(({ id }) => id === kept)) parameters.set(name, kept);
  }
  return parameters.toString();
}

/** Keeps a choice that is to be offered again. A browser that keeps nothing is left alone. */
export function remember(calculator: Calculator, name: string, text: string, memory: Memory): void {
  const field = calculator.fields[name];
  if (field?.kind !== 'choice' || !field.remember) return;
  try {
    memory.setItem(keyOf(field.remember), text);
  } catch {
    // Private windows and full disks refuse; the choice then lasts as long as the page.
  }
}

function read(memory: Memory, name: string): string | null {
  try {
    return memory.getItem(keyOf(name));
  } catch {
    return null;
  }
}

function keyOf(name: string): string {
  return `windlass.${name}`;
}
