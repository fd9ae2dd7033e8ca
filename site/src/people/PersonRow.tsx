import { useId, useState } from 'preact/hooks';
import { dateWords } from '../planner/sheet/dateWords.ts';
import { listAt, textAt } from '../planner/state/tree.ts';
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
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const gym = people.gyms.find((one) => one.record.id === record.gymId);
  const brief = [
    words.people.experience[textAt(record.client, ['experience'])],
    weightWords(textAt(record.client, ['bodyWeight'])),
    gym && words.people.at(gym.name),
    words.people.knownSets(listAt(record.client, ['sets']).length),
  ].filter(Boolean);
  return (
    <li class="entry">
      <div class="entry-head">
        <h3>{name}</h3>
        <p class="entry-brief">{brief.join(' · ')}</p>
      </div>
      <p class="entry-count">
        <span class="entry-number">{log.sessions}</span> {words.people.sessions(log.sessions)}
        <span class="entry-last">
          {log.lastDate === undefined
            ? words.people.noLog
            : words.people.last(dateWords(log.lastDate))}
        </span>
      </p>
      <div class="entry-actions">
        <a
          class="wl-button entry-go"
          href={planForClient(record.id)}
          aria-label={words.people.planFor(name)}
        >
          {words.people.plan}
        </a>
        <button
          type="button"
          class="wl-button"
          aria-expanded={isOpen}
          aria-controls={id}
          aria-label={words.people.moreOf(name)}
          onClick={() => setOpen(!isOpen)}
        >
          {words.people.more}
        </button>
      </div>
      <div id={id} class="entry-more" hidden={!isOpen}>
        {isOpen && <PersonDetails person={person} />}
      </div>
    </li>
  );
}
