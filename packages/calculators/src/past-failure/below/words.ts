import { inSentence } from '@windlass/core/basis';

/** What the calculator for sets past failure says below its answer. */
export const below = {
  byStage: 'Stage by stage',
  columns: { stage: 'Stage', count: 'Count', seconds: 'Seconds', left: 'Left' },
  none: (percent: string) => `Nothing of it in ${percent} of lifters.`,
  help: (percents: readonly string[]) =>
    `The partner lifts up to ${percents.join(', then ')} of the load.`,
  tableSays:
    'Likely, and what 8 of 10 lifters lie between: how many, seconds under load, strength left after it.',
  needs: 'What has to be there',
  stop: 'Stop at once, whatever stage it is',
  afterwards: 'And in the days after',
  cost: 'What it costs to recover from',
  costSays: (hardSets: string) =>
    `As much as ${hardSets} ordinary sets to failure, for every muscle it trains. One such set for an exercise and session is plenty.`,
  costPart: (name: string, hardSets: string) => `${inSentence(name)} ${hardSets}`,
  formula:
    'lift while c ≥ x, hold while c ≥ x·m ÷ k hold, lower while c ≥ x ÷ k lower; c is the strength left, x = load ÷ one-rep max',
  share: (load: string, max: string, percent: string) => `x = ${load} ÷ ${max} = ${percent}`,
  shareGiven: (percent: string) => `x = ${percent}, as given`,
  lifting: (percent: string, seconds: string) =>
    `A rep of ${seconds} s takes ${percent} of fresh strength; lifting fails below x.`,
  line: (kind: 'hold' | 'lower', likely: string, low: string, high: string) =>
    `${kind === 'hold' ? 'Holding' : 'Lowering'} fails below ${likely} (${low} to ${high}).`,
  lifters:
    '251 possible lifters, spread evenly over everything that is uncertain, do the chain; the bands hold 8 of 10.',
} as const;
