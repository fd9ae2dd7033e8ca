import { useKeeping } from './Keeping.ts';
import { words } from './words.ts';

/** How many people, gyms and sessions are kept. */
export function Counts() {
  const { people, gyms, sessions } = useKeeping().people;
  const counts = { people: people.length, gyms: gyms.length, sessions };
  return (
    <ul class="counts">
      {(['people', 'gyms', 'sessions'] as const).map((what) => (
        <li key={what}>
          <span class="entry-number">{counts[what]}</span>{' '}
          {counts[what] === 1 ? words.kept.one[what] : words.kept.counts[what]}
        </li>
      ))}
    </ul>
  );
}
