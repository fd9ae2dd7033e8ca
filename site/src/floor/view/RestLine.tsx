import { words } from '../words.ts';
import { clockWords } from './clockWords.ts';
import { useFloor } from './FloorContext.ts';
import { useNow } from './useNow.ts';

/** The rest by the clock on the wall: what is left of it, or since when it is over. */
export function RestLine() {
  const { session, state, say } = useFloor();
  const { rest } = state;
  const now = useNow(rest ? 'seconds' : 'nothing');
  if (!rest) return null;
  const left = rest.startedAt / 1000 + rest.seconds - now / 1000;
  const isOver = left <= 0;
  const before = state.last === null ? undefined : session.steps[state.last];
  const isChange = before?.lift !== session.steps[state.step]?.lift;
  const name = isChange ? words.rest.change : words.rest.name;
  return (
    <section
      class="floor-rest"
      data-over={isOver ? 'true' : undefined}
      aria-label={words.rest.name}
    >
      <p class="floor-rest-clock" role="timer">
        {isOver ? `+${clockWords(-left)}` : clockWords(left)}
      </p>
      <p class="floor-rest-name">{isOver ? words.rest.over : name}</p>
      <button
        type="button"
        class="wl-button"
        onClick={() =>
          say({ kind: 'rest-changed', seconds: 30 + (isOver ? Math.round(-left) : 0) })
        }
      >
        {words.rest.more}
      </button>
      <button type="button" class="wl-button" onClick={() => say({ kind: 'rest-over' })}>
        {words.rest.end}
      </button>
      <p class="visually-hidden" role="status">
        {isOver ? words.rest.over : ''}
      </p>
    </section>
  );
}
