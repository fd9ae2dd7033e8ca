/** The smallest whole number up to a limit for which something that stays true once true is so. */
export function smallest(limit: number, holds: (candidate: number) => boolean): number | undefined {
  if (limit < 1 || !holds(limit)) return undefined;
  let [low, high] = [0, limit];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
