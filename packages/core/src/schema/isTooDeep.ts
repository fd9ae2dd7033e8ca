/** Far deeper than anything that this library writes, and far from what a call stack holds. */
const MOST_LEVELS = 100;

/** Whether lists and objects lie inside one another deeper than a reader can follow them. */
export function isTooDeep(value: unknown, levels = MOST_LEVELS): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return levels === 0 || Object.values(value).some((part) => isTooDeep(part, levels - 1));
}
