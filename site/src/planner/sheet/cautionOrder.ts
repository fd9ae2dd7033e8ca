import type { Caution } from '@windlass/core/safety';

/** The levels of cautions, the gravest first. */
export const cautionLevels = ['stop', 'caution', 'note'] as const satisfies Caution['level'][];

/** What tells the levels apart without colour. */
export const cautionShapes = { stop: '■', caution: '▲', note: '●' } as const;

/** Cautions with the gravest first, else as they came. */
export function gravestFirst(cautions: readonly Caution[]): readonly Caution[] {
  return cautionLevels.flatMap((level) => cautions.filter((one) => one.level === level));
}
