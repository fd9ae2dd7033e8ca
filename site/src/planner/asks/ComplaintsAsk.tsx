import { getAt, isList, listAt, textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { CheckLine } from './fields/CheckLine.tsx';
import { ListAsk } from './fields/ListAsk.tsx';
import { words } from './words.ts';

const asked = words.health;
const path = ['client', 'health', 'complaints'];

/** What hurts, by where and when; with each, whether there is a sign that a clinician has to see. */
export function ComplaintsAsk() {
  const { draft, set } = useAsking();
  const names: Readonly<Record<string, string>> = asked.complaintNames;
  const kinds = listAt(draft, path).map((_, place) => textAt(draft, [...path, place, 'kind']));
  const isAsked = isList(getAt(draft, path));
  const toggle = (kind: string, isOn: boolean) => {
    if (isOn) return set([...path, kinds.length], { kind });
    return set(kinds.length === 1 ? path : [...path, kinds.indexOf(kind)], undefined);
  };
  return (
    <fieldset class="checks">
      <legend class="visually-hidden">{asked.complaints}</legend>
      {Object.entries(names).map(([kind, name]) => (
        <div key={kind}>
          <CheckLine
            isOn={kinds.includes(kind)}
            onToggle={(isOn) => toggle(kind, isOn)}
            label={name}
          />
          {kinds.includes(kind) && (
            <div class="checks-inner">
              <ListAsk
                at={[...path, kinds.indexOf(kind), 'redFlags']}
                label={asked.redFlags}
                choices={asked.redFlagNames}
              />
            </div>
          )}
        </div>
      ))}
      <CheckLine
        isOn={isAsked && kinds.length === 0}
        onToggle={(isOn) => set(path, isOn ? [] : undefined)}
        label={asked.nothingHurts}
      />
    </fieldset>
  );
}
