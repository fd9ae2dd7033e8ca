import { getAt, isRecord, textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { exerciseName } from './exerciseName.ts';
import { DayAsk } from './fields/DayAsk.tsx';
import { FieldRow } from './fields/FieldRow.tsx';
import { LoadAsk } from './fields/LoadAsk.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { SelectAsk } from './fields/SelectAsk.tsx';
import { TempoText } from './TempoText.tsx';
import { words } from './words.ts';

interface SetAskProps {
  readonly place: number;
  readonly number: number;
  /** Says which exercise it is, where the set does not stand under its lift. */
  readonly isNamed?: boolean;
}

/** A set that is known: day, load, repetitions, tempo, and how it ended. */
export function SetAsk({ place, number, isNamed = false }: SetAskProps) {
  const { draft, set, gym } = useAsking();
  const path = ['client', 'sets', place] as const;
  const at = (field: string) => [...path, field];
  const own = words.asks.set(number);
  const title = isNamed ? exerciseName(textAt(draft, at('exercise'))) : own;
  const equipment = gym.equipment.find(({ id }) => id === textAt(draft, at('equipment')));
  return (
    <fieldset class="set">
      <legend class="visually-hidden">{title}</legend>
      <div class="set-head">
        <span aria-hidden="true">{title}</span>
        <button
          type="button"
          class="wl-remove"
          aria-label={words.asks.remove(title)}
          onClick={() => set(path, undefined)}
        >
          <span aria-hidden="true">×</span>
        </button>
      </div>
      <FieldRow at={[at('date'), at('tempo')]}>
        <DayAsk at={at('date')} label={words.asks.setDate} isPart />
        <TempoText at={at('tempo')} label={words.asks.setTempo} isOptional isPart />
      </FieldRow>
      <FieldRow
        at={[at('load'), at('reps')]}
        layout="load"
        {...(number === 1 && { help: words.asks.setLoadHelp, lines: 2 })}
      >
        <LoadAsk at={at('load')} label={words.asks.setLoad} minKg={-1000} isPart />
        <NumberAsk at={at('reps')} label={words.asks.setReps} min={0} max={200} isPart />
      </FieldRow>
      <EndAsk place={place} />
      {equipment?.kind === 'body' && (
        <LoadAsk at={at('bodyWeight')} label={words.asks.bodyWeight} isOptional />
      )}
    </fieldset>
  );
}

/** How a set ended, and where a number belongs to that, the number. */
function EndAsk({ place }: { readonly place: number }) {
  const { draft, set } = useAsking();
  const at = ['client', 'sets', place, 'end'];
  const end = getAt(draft, at);
  const kind = isRecord(end) ? textAt(end, ['kind']) : String(end);
  const choose = (chosen: string) =>
    set(at, chosen === 'reserve' ? { kind: 'reserve', repsLeft: 2 } : chosen);
  const number = kind === 'reserve' ? 'repsLeft' : 'atLeast';
  const hasNumber = kind === 'reserve' || (isRecord(end) && kind === 'more');
  return (
    <FieldRow at={[at]}>
      <SelectAsk
        at={at}
        label={words.asks.setEnd}
        options={Object.entries(words.asks.ends)}
        value={kind}
        onValue={choose}
        isPart
      />
      {hasNumber && (
        <NumberAsk at={[...at, number]} label={words.asks[number]} min={0} max={50} isPart />
      )}
    </FieldRow>
  );
}
