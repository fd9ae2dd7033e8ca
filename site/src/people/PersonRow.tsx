import { dateWords } from '../planner/sheet/dateWords.ts';
import { listAt, textAt } from '../planner/state/tree.ts';
import { Entry } from './Entry.tsx';
import { useKeeping } from './Keeping.ts';
import type { Person } from './People.ts';
import { PersonDetails } from './PersonDetails.tsx';
import { planForClient } from './pages.ts';
import { weightWords } from './weightWords.ts';
import { words } from './words.ts';

/** A person: who it is, how much there is in the log, and the way to a plan. */
export function PersonRow({ person }: { readonly person: Person }) {
  const { record, name, log } = person;
  const { people } = useKeeping();
  const gym = people.gyms.find((one) => one.record.id === record.gymId);
  const brief = [
    words.people.experience[textAt(record.client, ['experience'])],
    weightWords(textAt(record.client, ['bodyWeight'])),
    gym && words.people.at(gym.name),
    words.people.knownSets(listAt(record.client, ['sets']).length),
  ].filter(Boolean);
  return (
    <Entry
      name={name}
      brief={brief.join(' · ')}
      count={
        <>
          <span class="entry-number">{log.sessions}</span> {words.people.sessions(log.sessions)}
          <span class="entry-last">
            {log.lastDate === undefined
              ? words.people.noLog
              : words.people.last(dateWords(log.lastDate))}
          </span>
        </>
      }
      go={{
        href: planForClient(record.id),
        label: words.people.planFor(name),
        says: words.people.plan,
      }}
      more={() => <PersonDetails person={person} />}
    />
  );
}
