import type { Source } from '../basis/index.ts';
import type { Adviser } from '../safety/index.ts';
import type { ChainRefusal } from './ChainRefusal.ts';
import { pastFailurePractice } from './chainSources.ts';

/** A refusal with the usual rest: nobody to ask, training practice as its source. */
export function refuse(
  code: string,
  stage: number | null,
  why: string,
  instead: string,
  { ask = [], sources = [pastFailurePractice] }: Grounds = {},
): ChainRefusal {
  return { code: `extension.${code}`, stage, why, instead, ask, sources };
}

interface Grounds {
  readonly ask?: readonly Adviser[];
  readonly sources?: readonly Source[];
}
