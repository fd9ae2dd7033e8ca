import type { Path } from '../state/tree.ts';
import { FieldRow } from './fields/FieldRow.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { TempoAsk } from './TempoAsk.tsx';
import { WindowAsk } from './WindowAsk.tsx';
import { words } from './words.ts';

/** How a lift is done: its window, its tempo, its sets and the rest between them. */
export function WorkAsk({ at }: { readonly at: (field: string) => Path }) {
  return (
    <>
      <WindowAsk at={at('window')} />
      <TempoAsk at={at('tempo')} />
      <FieldRow at={[at('sets'), at('restSeconds')]}>
        <NumberAsk at={at('sets')} label={words.asks.sets} min={1} max={10} isPart />
        <NumberAsk
          at={at('restSeconds')}
          label={words.asks.rest}
          min={0}
          max={1800}
          step={15}
          unit="s"
          isPart
        />
      </FieldRow>
    </>
  );
}
