import type { Source } from '../basis/index.ts';
import type { ChainRefusal } from './ChainRefusal.ts';
import { pastFailurePractice } from './chainSources.ts';

/** A refusal; training practice is its source where no other is named. */
export function refuse(
  code: string,
  stage: number | null,
  why: string,
  instead: string,
  sources: readonly Source[] = [pastFailurePractice],
): ChainRefusal {
  return { code: `extension.${code}`, stage, why, instead, sources };
}
