import { chainWords, loadingWords } from '@windlass/calculators/live';
import { phasesOfRep } from '@windlass/core/tempo';
import { durationWords } from '../../planner/sheet/durationWords.ts';
import { windowWords } from '../../planner/sheet/windowWords.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { stepLoad } from '../session/stepLoad.ts';
import { words } from '../words.ts';
import { useFloor } from './FloorContext.ts';
import { doneWords } from './LastSet.tsx';
import { loadText } from './loadText.ts';

/** All sets of the session in order: what is asked, what was done, where it stands. */
export function SetList({ planHref }: { readonly planHref: string }) {
  const { session } = useFloor();
  return (
    <section class="floor-list" aria-labelledby="floor-list-title">
      <div class="floor-list-head">
        <h2 id="floor-list-title">{words.list.title}</h2>
        <a href={planHref}>{words.list.back}</a>
      </div>
      {session.lifts.map((lift, place) => (
        <section key={place} class="floor-list-lift">
          <h3>{lift.name}</h3>
          <p>
            {lift.equipmentName}:{' '}
            {phasesOfRep(lift.tempo, { startsWith: lift.startsWith }).map(words.phase).join(', ')}.{' '}
            {lift.notes[0]}
          </p>
          <ol>
            {session.steps.map((step, at) => step.lift === place && <ListedSet key={at} at={at} />)}
          </ol>
        </section>
      ))}
      <LeftOut leftOut={session.leftOut} />
    </section>
  );
}

function ListedSet({ at }: { readonly at: number }) {
  const { session, state, say } = useFloor();
  const step = session.steps[at];
  const lift = step && session.lifts[step.lift];
  if (!step || !lift) return null;
  const done = state.done.get(at);
  const isNow = state.phase !== 'over' && state.step === at;
  const isFree = state.phase === 'ready' || (state.phase === 'over' && !state.endedBySign);
  const name = [
    words.set(words.kinds[step.kind], step.number, step.of),
    step.side && words.sides[step.side],
  ]
    .filter(Boolean)
    .join(', ');
  const load = stepLoad(session, state, at);
  const chain = state.chains.get(at);
  const asked = step.kind === 'work' ? windowWords(lift.window) : String(step.reps);
  return (
    <li aria-current={isNow ? 'step' : undefined} data-done={done ? 'true' : undefined}>
      <span class="listed-name">{name}</span>
      {step.restSeconds > 0 && (
        <span class="listed-rest">{words.list.rest(durationWords(step.restSeconds))}</span>
      )}
      <span class="listed-what">
        <strong>{load ? loadText(load.shown, session.unit) : words.noLoadYet}</strong>
        {` × ${asked}`}
        {load && <small>{loadingWords(load)}</small>}
        {chain && !done && (
          <small>
            {words.carryOn.chosen(chain.stages.slice(1).map(chainWords.stage).join(', '))}
          </small>
        )}
        {done && step.kind !== 'warm-up' && <small>{doneWords(done)}</small>}
        {state.leftOut.has(at) && <small>{words.list.leftOut}</small>}
      </span>
      {isFree && !isNow && (
        <button
          type="button"
          class="wl-button needs-script"
          aria-label={words.list.go(`${lift.name}, ${name}`)}
          onClick={() => say({ kind: 'gone-to', step: at })}
        >
          →
        </button>
      )}
    </li>
  );
}

function LeftOut({ leftOut }: Pick<FloorSession, 'leftOut'>) {
  if (leftOut.length === 0) return null;
  return (
    <section class="floor-list-lift">
      <h3>{words.list.leftOutTitle}</h3>
      <ul>
        {leftOut.map(({ name, reason }) => (
          <li key={name}>
            <strong>{name}:</strong> {reason}
          </li>
        ))}
      </ul>
    </section>
  );
}
