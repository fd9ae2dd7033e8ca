/** The clock on the wall was set, or the device slept, when it is further off than this. */
const JUMP_MILLISECONDS = 1000;

let offset: number | undefined;

/**
 * Milliseconds of the clock on the wall, running evenly: small corrections of that clock are not
 * followed, so that a count does not stumble; the device's sleep and a clock that is set anew are.
 */
export function wallNow(): number {
  const even = performance.now();
  const wall = Date.now();
  if (offset === undefined || Math.abs(wall - even - offset) > JUMP_MILLISECONDS) {
    offset = wall - even;
  }
  return offset + even;
}
