/** Active, resting and fatigued shares; they sum to 1. */
export type Compartments = readonly [active: number, resting: number, fatigued: number];

/** A load that is carried, its rates, and how far to go. */
export interface CarryingInput {
  readonly load: number;
  readonly fatigue: number;
  readonly recovery: number;
  readonly start: Compartments;
  /** The longest to carry it; until failure when left out. */
  readonly mostSeconds?: number;
}

/**
 * A carried load by numeric integration of the full published equations, to failure or for so many
 * seconds: an oracle for tests, independent of the closed form.
 *
 * Xia T, Frey Law LA. J Biomech 2008;41:3046-3052: dMA/dt = C − F·MA, dMR/dt = −C + R·MF,
 * dMF/dt = F·MA − R·MF, with C = 10·(TL − MA) when MA < TL and MR > TL − MA, 10·MR when MA < TL
 * and MR ≤ TL − MA, and 10·(TL − MA) when MA ≥ TL; failure when MA + MR < TL first.
 * Integrated with the Runge-Kutta-Fehlberg 4(5) pair, step chosen for an error of 1e-7.
 */
export function integrateCarrying({
  load,
  fatigue,
  recovery,
  start,
  mostSeconds = Number.POSITIVE_INFINITY,
}: CarryingInput): { readonly seconds: number; readonly end: Compartments } {
  const slope = ([active, resting, fatigued]: Compartments): Compartments => {
    const drive = active < load && resting <= load - active ? 10 * resting : 10 * (load - active);
    const tiring = fatigue * active - recovery * fatigued;
    return [drive - fatigue * active, -drive + recovery * fatigued, tiring];
  };
  let seconds = 0;
  let step = 0.01;
  let state = start;
  while (state[0] + state[1] >= load && seconds < mostSeconds) {
    const length = Math.min(step, mostSeconds - seconds);
    const { next, error } = fehlbergStep(slope, state, length);
    if (error <= 1e-7) {
      seconds += length;
      state = next;
    }
    step = Math.min(
      0.5,
      length * Math.min(4, Math.max(0.1, 0.9 * (1e-7 / (error + 1e-300)) ** 0.2)),
    );
  }
  return { seconds, end: state };
}

function fehlbergStep(
  slope: (state: Compartments) => Compartments,
  state: Compartments,
  step: number,
) {
  const at = (...parts: readonly (readonly [number, Compartments])[]): Compartments => {
    const sum = (i: 0 | 1 | 2) => parts.reduce((s, [weight, k]) => s + weight * k[i], 0);
    return [state[0] + step * sum(0), state[1] + step * sum(1), state[2] + step * sum(2)];
  };
  const k1 = slope(state);
  const k2 = slope(at([1 / 4, k1]));
  const k3 = slope(at([3 / 32, k1], [9 / 32, k2]));
  const k4 = slope(at([1932 / 2197, k1], [-7200 / 2197, k2], [7296 / 2197, k3]));
  const k5 = slope(at([439 / 216, k1], [-8, k2], [3680 / 513, k3], [-845 / 4104, k4]));
  const k6 = slope(
    at([-8 / 27, k1], [2, k2], [-3544 / 2565, k3], [1859 / 4104, k4], [-11 / 40, k5]),
  );
  const fourth = at([25 / 216, k1], [1408 / 2565, k3], [2197 / 4104, k4], [-1 / 5, k5]);
  const next = at(
    [16 / 135, k1],
    [6656 / 12825, k3],
    [28561 / 56430, k4],
    [-9 / 50, k5],
    [2 / 55, k6],
  );
  return { next, error: Math.hypot(...next.map((value, i) => value - (fourth[i] ?? 0))) };
}
