import type { DoneSession } from '@windlass/core/schema';
import { dayWords } from '../../planner/sheet/dayWords.ts';
import { useChanges } from '../useChanges.ts';
import { words as pageWords } from '../words.ts';
import { endWords } from './endWords.ts';
import { exerciseName } from './exerciseName.ts';
import { loadWords } from './loadWords.ts';
import { words } from './words.ts';

/** One session of a log: the day, and behind it its sets. */
export function SessionView({ session }: { readonly session: DoneSession }) {
  const { remove } = useChanges();
  const day = dayWords(session.date);
  return (
    <details class="session">
      <summary>{words.session(day, session.sets.length)}</summary>
      <div class="session-inside">
        <div class="wide-table">
          <table>
            <thead>
              <tr>
                <th scope="col">{words.exercise}</th>
                <th scope="col">{words.load}</th>
                <th scope="col">{words.reps}</th>
                <th scope="col">{words.ended}</th>
              </tr>
            </thead>
            <tbody>
              {session.sets.map((set) => (
                <tr key={`${set.exercise}/${set.set}/${set.side ?? ''}`}>
                  <td>{exerciseName(set.exercise)}</td>
                  <td>{loadWords(set)}</td>
                  <td>{set.reps}</td>
                  <td>{endWords(set)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
        <button
          type="button"
          class="wl-button entry-delete"
          aria-label={`${words.delete}: ${day}`}
          onClick={() => remove('sessions', session, day, pageWords.said.sessionDeleted(day))}
        >
          {words.delete}
        </button>
      </div>
    </details>
  );
}
