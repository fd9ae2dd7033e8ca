import type { CapacityState } from '../capacity/index.ts';

/** Two fatigues on the same muscles. */
export function together(a: CapacityState, b: CapacityState): CapacityState {
  const sum: Record<string, CapacityState[string]> = { ...a };
  for (const [muscle, { fast, slow }] of Object.entries(b)) {
    const before = a[muscle] ?? { fast: 0, slow: 0 };
    sum[muscle] = { fast: before.fast + fast, slow: before.slow + slow };
  }
  return sum;
}
