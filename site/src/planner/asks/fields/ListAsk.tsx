import { getAt, isList, listAt, type Path } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { idOf } from '../problemsAt.ts';
import { words } from '../words.ts';
import { CheckLine } from './CheckLine.tsx';

interface ListAskProps {
  readonly at: Path;
  readonly label: string;
  readonly choices: Readonly<Record<string, string>>;
  /** The label is said already by what is around the list. */
  readonly isLabelHidden?: boolean;
}

/** Any of several words. Nothing ticked is not asked; none of these is an answer of its own. */
export function ListAsk({ at, label, choices, isLabelHidden = false }: ListAskProps) {
  const { draft, set } = useAsking();
  const chosen = listAt(draft, at);
  const isAsked = isList(getAt(draft, at));
  const toggle = (id: string, isOn: boolean) => {
    const next = isOn ? [...chosen, id] : chosen.filter((other) => other !== id);
    set(at, next.length === 0 ? undefined : next);
  };
  return (
    <fieldset class="checks" id={idOf(at)}>
      <legend class={isLabelHidden ? 'visually-hidden' : 'ask-label'}>{label}</legend>
      {Object.entries(choices).map(([id, name]) => (
        <CheckLine
          key={id}
          isOn={chosen.includes(id)}
          onToggle={(isOn) => toggle(id, isOn)}
          label={name}
        />
      ))}
      <CheckLine
        isOn={isAsked && chosen.length === 0}
        onToggle={(isOn) => set(at, isOn ? [] : undefined)}
        label={words.health.noneOfThese}
      />
    </fieldset>
  );
}
