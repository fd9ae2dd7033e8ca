import { muscles } from '@windlass/core/anatomy';
import type { LiftIntent } from '@windlass/core/session';
import { keepChosen, removeMuscles } from '../state/muscleEdits.ts';
import { listAt } from '../state/tree.ts';
import { words } from '../words.ts';
import { useAsking } from './Asking.ts';
import { CheckLine } from './fields/CheckLine.tsx';
import { HelpLine } from './fields/HelpLine.tsx';
import { idOf, problemsAt } from './problemsAt.ts';
import { WorkAsk } from './WorkAsk.tsx';

const at = (field: string) => ['intent', 'muscles', field];
const groups = [...Map.groupBy(muscles, ({ group }) => group)];

interface MusclesAskProps {
  /** What was chosen for the muscles. */
  readonly chosen: readonly LiftIntent[];
}

/** Which muscles lifts are to be chosen for, and how each of those is done. */
export function MusclesAsk({ chosen }: MusclesAskProps) {
  const { draft, problems, set, change } = useAsking();
  const wanted = listAt(draft, at('muscles'));
  const toggle = (id: string, isOn: boolean) =>
    set(at('muscles'), isOn ? [...wanted, id] : wanted.filter((other) => other !== id));
  const { muscles: said } = words;
  return (
    <>
      <div class="order">
        <p class="order-title">{said.title}</p>
        <button
          type="button"
          class="wl-button"
          aria-label={said.remove}
          disabled={listAt(draft, ['intent', 'lifts']).length === 0}
          onClick={() => change(removeMuscles)}
        >
          <span aria-hidden="true">×</span>
        </button>
      </div>
      <div id={idOf(at('muscles'))} class="muscles">
        {groups.map(([group, members]) => (
          <fieldset class="checks" key={group}>
            <legend class="ask-label">{said.groups[group]}</legend>
            {members.map(({ id, name }) => (
              <CheckLine
                key={id}
                isOn={wanted.includes(id)}
                onToggle={(isOn) => toggle(id, isOn)}
                label={name}
              />
            ))}
          </fieldset>
        ))}
      </div>
      <HelpLine
        id={`${idOf(at('muscles'))}-help`}
        help={said.help}
        problems={problemsAt(problems, at('muscles'))}
      />
      <WorkAsk at={at} />
      <button
        type="button"
        class="wl-button"
        disabled={chosen.length === 0}
        onClick={() => change((before) => keepChosen(before, chosen))}
      >
        {said.keep}
      </button>
    </>
  );
}
