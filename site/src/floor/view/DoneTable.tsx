import { words } from '../words.ts';
import { useFloor } from './FloorContext.ts';
import { doneWords } from './LastSet.tsx';
import { loadText } from './loadText.ts';
import { standingOf } from './standingOf.ts';

/** The sets of a lift that were done, each beside what was expected of it. */
export function DoneTable({ place }: { readonly place: number }) {
  const { session, state } = useFloor();
  const lift = session.lifts[place];
  const rows = session.steps.flatMap((step, at) => {
    const done = state.done.get(at);
    return done && step.lift === place && step.kind !== 'warm-up' ? [{ step, done }] : [];
  });
  if (!lift || rows.length === 0) return null;
  const { columns, expected } = words.over;
  return (
    <table class="over-table">
      <thead>
        <tr>
          <th scope="col">{columns.set}</th>
          <th scope="col">{columns.load}</th>
          <th scope="col">{columns.expected}</th>
          <th scope="col">{columns.done}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ step, done }) => {
          const standing = standingOf(done, step, lift);
          return (
            <tr key={done.step}>
              <th scope="row">
                {step.number}
                {step.side && ` ${words.sides[step.side]}`}
              </th>
              <td>{done.load && loadText(done.load.shown, session.unit)}</td>
              <td>
                {step.expected &&
                  expected(Math.round(step.expected.low), Math.round(step.expected.high))}
              </td>
              <td>
                {doneWords(done)}
                {standing && <small>{words.standing[standing]}</small>}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
