import { exercises } from '@windlass/core/anatomy';
import type { Equipment } from '@windlass/core/equipment';
import type { LoggedSet } from '@windlass/core/progress';
import { Choice } from './Choice.tsx';
import { type NameChoice, type NameChoices, onlyThing, thingsFor } from './NameChoice.ts';
import { words } from './words.ts';

interface NameTableProps {
  readonly sets: readonly LoggedSet[];
  readonly choices: NameChoices;
  readonly equipment: readonly Equipment[];
  readonly onChoice: (name: string, choice: NameChoice) => void;
}

const list = exercises
  .map(({ id, name }) => [id, name] as const)
  .sort(([, a], [, b]) => a.localeCompare(b));

/** Asks of each name in a log which exercise of the list it is, and on what it was done. */
export function NameTable({ sets, choices, equipment, onChoice }: NameTableProps) {
  const asked = words.brought;
  return (
    <fieldset class="bring-names">
      <legend>{asked.names}</legend>
      <p class="soft">{asked.namesHelp}</p>
      {Object.entries(choices).map(([name, choice]) => {
        const own = sets.filter(({ exercise }) => exercise === name);
        const things = thingsFor(choice.exercise, equipment).map(
          (one) => [one.id, one.name] as const,
        );
        return (
          <div key={name} class="bring-name">
            <p>
              {name} <span class="soft">{asked.sets(own.length)}</span>
            </p>
            <Choice
              label={asked.exerciseOf(name)}
              value={choice.exercise}
              options={[['', asked.ownName], ...list]}
              onValue={(exercise) =>
                onChoice(name, { exercise, equipment: onlyThing(exercise, equipment) })
              }
            />
            {things.length > 0 && own.some((set) => set.equipment === undefined) && (
              <Choice
                label={asked.equipmentOf(name)}
                value={choice.equipment}
                options={[['', asked.noEquipment], ...things]}
                onValue={(id) => onChoice(name, { ...choice, equipment: id })}
              />
            )}
          </div>
        );
      })}
    </fieldset>
  );
}
