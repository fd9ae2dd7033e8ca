import type { ChainIntent } from '@windlass/core/session';
import { getAt, type Json, type Path } from './tree.ts';

type Stages = ChainIntent['stages'];

const hold = { kind: 'hold', at: 'middle', maxSeconds: 20 } as const;
const lower = { kind: 'lower', secondsEach: 5, maxLowerings: 3 } as const;

/** Ways to go on past lifting failure that the page offers; a plan file may hold any other. */
export const chainChoices = {
  hold: [hold],
  lower: [lower],
  'hold-lower': [hold, lower],
  lighter: [{ kind: 'lighter', loadShare: 0.8 }],
  pause: [{ kind: 'pause', seconds: 15 }],
  'part-range': [{ kind: 'part-range', maxReps: 5 }],
} as const satisfies Record<string, Stages>;

export type ChainChoice = keyof typeof chainChoices;

/** Which of them a draft has at a place: none, one, or stages of its own. */
export function chainChoiceAt(draft: Json, at: Path): ChainChoice | '' | 'own' {
  const stages = getAt(draft, [...at, 'stages']);
  if (stages === undefined) return '';
  const written = JSON.stringify(stages);
  const known = Object.entries(chainChoices).find(([, own]) => JSON.stringify(own) === written);
  return known ? (known[0] as ChainChoice) : 'own';
}
