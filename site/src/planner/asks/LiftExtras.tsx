import { type ChainChoice, chainChoiceAt, chainChoices } from '../state/chainChoices.ts';
import { getAt, listAt, textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { CheckLine } from './fields/CheckLine.tsx';
import { FieldRow } from './fields/FieldRow.tsx';
import { LoadAsk } from './fields/LoadAsk.tsx';
import { NumberAsk } from './fields/NumberAsk.tsx';
import { SelectAsk } from './fields/SelectAsk.tsx';
import { words } from './words.ts';

/** What a lift may be besides sets by themselves: joined with the next, past failure, fixed by hand. */
export function LiftExtras({ place }: { readonly place: number }) {
  const { draft } = useAsking();
  const isLast = place === listAt(draft, ['intent', 'lifts']).length - 1;
  return (
    <>
      {!isLast && <JoinAsk place={place} />}
      <ChainAsk place={place} />
      <FixedAsk place={place} />
    </>
  );
}

const joinAt = (place: number) => ['intent', 'lifts', place, 'join'];

/** Whether a lift is done in rounds with the next one, and how fast the change is. */
function JoinAsk({ place }: { readonly place: number }) {
  const { draft, set } = useAsking();
  const at = joinAt(place);
  const kind = textAt(draft, [...at, 'kind']);
  const { label, kinds, help, transition } = words.extras.join;
  return (
    <FieldRow at={[at, [...at, 'transitionSeconds']]} help={help}>
      <SelectAsk
        at={at}
        label={label}
        options={Object.entries(kinds)}
        value={kind}
        onValue={(chosen) =>
          set(
            at,
            chosen === ''
              ? undefined
              : { kind: chosen, transitionSeconds: chosen === 'pair' ? 10 : 60 },
          )
        }
        isPart
      />
      {kind !== '' && (
        <NumberAsk
          at={[...at, 'transitionSeconds']}
          label={transition}
          min={0}
          max={600}
          step={5}
          unit="s"
          isPart
        />
      )}
    </FieldRow>
  );
}

/** How the last set goes on past lifting failure, and what is there to catch the load. */
function ChainAsk({ place }: { readonly place: number }) {
  const { draft, set } = useAsking();
  const at = ['intent', 'lifts', place, 'chain'];
  const choice = chainChoiceAt(draft, at);
  const { label, choices, own, help, stops, switchedOn } = words.extras.chain;
  const choose = (chosen: string) => {
    const stages = chainChoices[chosen as ChainChoice];
    if (stages) set([...at, 'stages'], stages);
    else if (chosen === '') set(at, undefined);
  };
  return (
    <>
      <SelectAsk
        at={at}
        label={label}
        help={help}
        options={[...Object.entries(choices), ...(choice === 'own' ? [['own', own] as const] : [])]}
        value={choice}
        onValue={choose}
      />
      {choice !== '' && (
        <>
          <CheckLine
            label={stops}
            isOn={getAt(draft, [...at, 'stops']) === true}
            onToggle={(isOn) => set([...at, 'stops'], isOn ? true : undefined)}
          />
          <CheckLine
            label={switchedOn}
            isOn={getAt(draft, [...at, 'switchedOn']) === true}
            onToggle={(isOn) => set([...at, 'switchedOn'], isOn ? true : undefined)}
          />
        </>
      )}
    </>
  );
}

/** What is fixed by hand in place of what would be chosen. */
function FixedAsk({ place }: { readonly place: number }) {
  const { draft, set } = useAsking();
  const at = (field: string) => ['intent', 'lifts', place, 'overrules', field];
  const { load, loadHelp, noWarmUp, keepSets } = words.extras.fixed;
  const warmUp = getAt(draft, at('warmUp'));
  const wanted = getAt(draft, ['intent', 'lifts', place, 'sets']);
  return (
    <>
      <LoadAsk at={at('load')} label={load} help={loadHelp} isOptional />
      <CheckLine
        label={noWarmUp}
        isOn={Array.isArray(warmUp) && warmUp.length === 0}
        onToggle={(isOn) => set(at('warmUp'), isOn ? [] : undefined)}
      />
      <CheckLine
        label={keepSets}
        isOn={getAt(draft, at('sets')) !== undefined}
        onToggle={(isOn) => set(at('sets'), isOn ? wanted : undefined)}
      />
    </>
  );
}
