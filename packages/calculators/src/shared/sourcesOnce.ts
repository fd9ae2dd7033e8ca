import type { Source } from '@windlass/core/basis';

/** Every source that reasons rest on, once. */
export function sourcesOnce(reasons: readonly { readonly sources: readonly Source[] }[]) {
  const byId = new Map(reasons.flatMap(({ sources }) => sources.map((one) => [one.id, one])));
  return [...byId.values()];
}
