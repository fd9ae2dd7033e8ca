/** Words that give away a number or a value that was never there. */
const LEAKS = /\b(?:NaN|undefined|Infinity)\b|\[object /;

/** Objects that were found sound; results share most of their parts with the tables behind them. */
const sound = new WeakSet<object>();

/**
 * What is wrong with an output, by its place; `null` for a sound one. Numbers are finite, nothing is
 * undefined, nothing inherits from what was read, and a refusal says why. `echoes` allows the words
 * of a lost number where the input holds them.
 */
export function faultIn(value: unknown, echoes: boolean, place = 'output'): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${place} is ${value}`;
  if (value === undefined) return `${place} is undefined`;
  if (typeof value === 'string') {
    return !echoes && LEAKS.test(value) ? `${place} says ${value.slice(0, 200)}` : null;
  }
  if (typeof value !== 'object' || value === null || sound.has(value)) return null;
  const fault = faultInside(value, echoes, place);
  if (fault === null && !echoes) sound.add(value);
  return fault;
}

function faultInside(value: object, echoes: boolean, place: string): string | null {
  if (!Array.isArray(value) && !isPlain(value)) {
    return value instanceof Map || value instanceof Set
      ? faultIn([...value].flat(), echoes, place)
      : `${place} inherits from ${String(Object.getPrototypeOf(value)?.constructor?.name)}`;
  }
  if ('ok' in value && value.ok === false) {
    const refusal = refusalFault(value, place);
    if (refusal !== null) return refusal;
  }
  for (const [name, part] of Object.entries(value)) {
    if (name === 'received') continue;
    const fault = faultIn(part, echoes, `${place}.${name}`);
    if (fault !== null) return fault;
  }
  return null;
}

function isPlain(value: object): boolean {
  const prototype = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype;
}

function refusalFault(value: object, place: string): string | null {
  const problems = 'problems' in value ? value.problems : undefined;
  if (!Array.isArray(problems) || problems.length === 0)
    return `${place} refuses without a problem`;
  const mute = problems.find(
    ({ code, message }) => !/^[a-z]+\.[a-z0-9-]+$/.test(code) || !/[.?!]$/.test(message),
  );
  return mute ? `${place} has a problem without code or sentence: ${JSON.stringify(mute)}` : null;
}
