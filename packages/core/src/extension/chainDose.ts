import type { Source } from '../basis/index.ts';
import { ahtiainen, pastFailurePractice } from './chainSources.ts';
import type { Stage, StageKind } from './Stage.ts';
import { stageDoses } from './stageDoses.ts';

/** Recovery cost of a chain, whole and by stage. */
export interface ChainDose {
  /** Sets to failure that cost as much recovery, 1 or more. */
  readonly hardSets: number;
  readonly parts: readonly { readonly kind: StageKind; readonly hardSets: number }[];
  readonly sources: readonly Source[];
}

/**
 * How much recovery a chain costs, counted in sets to failure, for each muscle it trains.
 *
 * @returns 1 for lifting to failure alone, more with every further stage; 0 without stages.
 * @example
 * ```ts
 * import { chainDose } from '@windlass/core/extension';
 * chainDose([{ kind: 'lift' }]).hardSets; // 1
 * chainDose([
 *   { kind: 'lift' },
 *   { kind: 'hold', at: 'middle', maxSeconds: 20 },
 *   { kind: 'lower', secondsEach: 5, maxLowerings: 3 },
 * ]).hardSets; // 1.75
 * ```
 */
export function chainDose(stages: readonly Stage[]): ChainDose {
  const parts = stages.map(({ kind }) => ({ kind, hardSets: stageDoses[kind] }));
  return {
    hardSets: parts.reduce((sum, part) => sum + part.hardSets, 0),
    parts,
    sources: [pastFailurePractice, ahtiainen],
  };
}
