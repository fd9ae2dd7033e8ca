import type { Path } from '../state/tree.ts';
import { FieldRow } from './fields/FieldRow.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { words } from './words.ts';

/** The repetitions in which a set is wanted to end, both ends with their own steps. */
export function WindowAsk({ at }: { readonly at: Path }) {
  return (
    <FieldRow at={[at, at]}>
      <NumberAsk
        at={[...at, 'minReps']}
        label={words.asks.fewest}
        min={1}
        max={100}
        unit={words.asks.repsUnit}
        isPart
      />
      <NumberAsk
        at={[...at, 'maxReps']}
        label={words.asks.most}
        min={1}
        max={100}
        unit={words.asks.repsUnit}
        isPart
      />
    </FieldRow>
  );
}
