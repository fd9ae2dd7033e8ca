import { TempoControl, type TempoField } from '@windlass/calculators/ui';
import type { TempoOrder } from '@windlass/core/tempo';
import { tempoFile, tempoOrderAt, tempoTextAt } from '../state/tempoEdits.ts';
import type { Path } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { FieldFrame } from './fields/FieldFrame.tsx';
import { FieldRow } from './fields/FieldRow.tsx';
import { SelectAsk } from './fields/SelectAsk.tsx';
import { idOf, problemsAt } from './problemsAt.ts';
import { words } from './words.ts';

const field: TempoField = {
  kind: 'tempo',
  label: words.asks.tempo,
  help: '',
  orderFrom: 'order',
  default: null,
};

/** A tempo with a stepper for each part, in the order in which it is written. */
export function TempoAsk({ at }: { readonly at: Path }) {
  const { draft, problems, set } = useAsking();
  const text = tempoTextAt(draft, at);
  const order = tempoOrderAt(draft, at);
  return (
    <FieldRow at={[at]} help={words.asks.tempoHelp} layout="tempo">
      <FieldFrame at={at} label={words.asks.tempo} isPart>
        <TempoControl
          id={idOf(at)}
          field={field}
          text={text}
          onText={(next) => set(at, tempoFile(next, order))}
          problems={problemsAt(problems, at)}
          label={words.asks.tempo}
          texts={{ order }}
          describedBy={`${idOf(at)}-help`}
        />
      </FieldFrame>
      <SelectAsk
        at={[...at, 'order']}
        label={words.asks.order}
        options={Object.entries(words.asks.orders)}
        value={order}
        onValue={(chosen) => set(at, tempoFile(text, chosen as TempoOrder))}
        isPart
      />
    </FieldRow>
  );
}
