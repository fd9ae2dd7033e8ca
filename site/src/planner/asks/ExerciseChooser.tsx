import type { Exercise } from '@windlass/core/anatomy';
import type { Gym } from '@windlass/core/equipment';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { exerciseList, type MovementGroup } from '../state/exerciseList.ts';
import { words as page } from '../words.ts';
import { words } from './words.ts';

interface ExerciseChooserProps {
  readonly gym: Gym;
  readonly chosen?: string | undefined;
  readonly onChoose: (exercise: Exercise) => void;
  readonly onClose: () => void;
}

/** The list of exercises over the page, with a search. */
export function ExerciseChooser({ gym, chosen, onChoose, onClose }: ExerciseChooserProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [search, setSearch] = useState('');
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    // On a touch screen the keyboard would come up over the list.
    if (matchMedia('(pointer: fine)').matches) input.current?.focus();
  }, []);
  const list = useMemo(() => exerciseList(search, gym.equipment), [search, gym]);
  const groups = { chosen, onChoose };
  return (
    <dialog class="chooser" ref={dialog} aria-labelledby="chooser-title" onClose={onClose}>
      <div class="chooser-head">
        <h2 id="chooser-title">{words.chooser.title}</h2>
        <button type="button" class="wl-button" onClick={() => dialog.current?.close()}>
          {page.actions.close}
        </button>
        <label class="ask-label" for="chooser-search">
          {words.chooser.search}
        </label>
        <span class="wl-box">
          <input
            ref={input}
            id="chooser-search"
            class="wl-input"
            type="search"
            autocomplete="off"
            value={search}
            aria-describedby="chooser-help"
            onInput={(event) => setSearch(event.currentTarget.value)}
          />
        </span>
        <p class="ask-help" id="chooser-help" role="status">
          {list.count === 0
            ? words.chooser.none
            : `${words.chooser.searchHelp} ${words.chooser.found(list.count)}.`}
        </p>
      </div>
      <div class="chooser-list">
        <Part title={words.chooser.loadable} groups={list.loadable} {...groups} />
        <Part title={words.chooser.notLoadable} groups={list.others} {...groups} />
        <p class="soft">{words.chooser.timed}</p>
      </div>
    </dialog>
  );
}

interface PartProps extends Pick<ExerciseChooserProps, 'chosen' | 'onChoose'> {
  readonly title: string;
  readonly groups: readonly MovementGroup[];
}

function Part({ title, groups, chosen, onChoose }: PartProps) {
  if (groups.length === 0) return null;
  return (
    <section>
      <h3 class="chooser-part">{title}</h3>
      {groups.map(({ movement, exercises }) => (
        <div key={movement} class="chooser-group">
          <h4>{words.movements[movement]}</h4>
          <ul>
            {exercises.map((exercise) => (
              <li key={exercise.id}>
                <button
                  type="button"
                  class="chooser-item"
                  aria-current={exercise.id === chosen ? 'true' : undefined}
                  onClick={() => onChoose(exercise)}
                >
                  {exercise.name}
                  {exercise.stations.length > 0 && (
                    <small>
                      {words.chooser.needs(
                        exercise.stations.map((station) => words.stations[station]).join(', '),
                      )}
                    </small>
                  )}
                </button>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}
