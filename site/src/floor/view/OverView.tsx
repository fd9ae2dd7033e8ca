import {
  type LoadAdvice,
  type LoggedSet,
  writeLogCsv,
  writeLogJson,
} from '@windlass/core/progress';
import { useMemo, useState } from 'preact/hooks';
import { saveFile } from '../../planner/saveFile.ts';
import { dayWords } from '../../planner/sheet/dayWords.ts';
import type { Planned } from '../../planner/state/planFrom.ts';
import { wallNow } from '../count/wallClock.ts';
import { sessionResult } from '../desk/sessionResult.ts';
import type { Kept } from '../keep/openKeeper.ts';
import { dayOf } from '../log/dayDone.ts';
import { words } from '../words.ts';
import { DoneTable } from './DoneTable.tsx';
import { useFloor } from './FloorContext.ts';
import { loadText } from './loadText.ts';
import { Primary } from './Primary.tsx';

export interface OverViewProps {
  readonly planned: Planned;
  readonly onEnd: (done: {
    readonly date: string;
    readonly sets: readonly LoggedSet[];
  }) => Promise<Kept>;
  readonly onAgain: () => void;
}

/** A session that is over: expected against done, the next loads, and the way into the log. */
export function OverView({ planned, onEnd, onAgain }: OverViewProps) {
  const { session, state, effective, say } = useFloor();
  const [isEnded, setEnded] = useState(false);
  const result = useMemo(
    () => sessionResult(planned, session, state, dayOf(wallNow())),
    [planned, session, state],
  );
  const { date, sets, next, nextDay } = result;
  const { over } = words;
  const has = sets.length > 0;
  const name = (ending: string) => `${slug(session.client)}-${date}.${ending}`;
  return (
    <>
      <div class="floor-set floor-over">
        <h2 tabIndex={-1}>{over.title}</h2>
        <p>{has ? over.day(dayWords(date)) : over.nothing}</p>
        {session.lifts.map((lift, place) => (
          <section key={place} class="over-lift">
            <h3>{lift.name}</h3>
            <NextLoad advice={next[place] ?? null} unit={session.unit} />
            <DoneTable place={place} />
          </section>
        ))}
        {nextDay && <p>{over.nextDay(dayWords(nextDay.likely), dayWords(nextDay.cautious))}</p>}
        {has && (
          <div class="over-files">
            <button
              type="button"
              class="wl-button"
              onClick={() => saveFile(name('csv'), writeLogCsv(sets))}
            >
              {over.csv}
            </button>
            <button
              type="button"
              class="wl-button"
              onClick={() => saveFile(name('json'), writeLogJson(sets))}
            >
              {over.json}
            </button>
          </div>
        )}
      </div>
      <div class="floor-actions">
        {isEnded ? (
          <>
            <p role="status">{has ? over.logged(session.client) : over.left}</p>
            <Primary name={over.again} focusOn="again" onPress={onAgain} />
          </>
        ) : (
          <>
            <Primary
              name={has ? over.log(session.client) : over.leave}
              focusOn="log"
              onPress={async () => setEnded((await onEnd({ date, sets })).kind === 'kept')}
            />
            <button
              type="button"
              class="wl-button"
              disabled={effective.events.length === 0}
              onClick={() => say({ kind: 'undone' })}
            >
              {words.undo}
            </button>
          </>
        )}
      </div>
    </>
  );
}

function NextLoad({
  advice,
  unit,
}: {
  readonly advice: LoadAdvice | null;
  readonly unit: 'kg' | 'lb';
}) {
  const { over } = words;
  if (!advice) return <p>{over.notDone}</p>;
  const face = faceOf(advice);
  return (
    <div class="over-next">
      <p class="over-next-name">{over.next}</p>
      {face.load !== null && (
        <p class="floor-number">
          {loadText(face.load, unit)}
          {face.aim !== null && <small> {over.aim(face.aim)}</small>}
        </p>
      )}
      <p>{face.says}</p>
    </div>
  );
}

function faceOf(advice: LoadAdvice) {
  switch (advice.kind) {
    case 'stop':
      return { load: null, aim: null, says: advice.says };
    case 'no-history':
      return { load: null, aim: null, says: words.over.noNext };
    case 'no-loads':
      return { load: null, aim: null, says: advice.why.message };
    case 'come-back': {
      const { comeback } = advice;
      if (comeback.kind === 'no-load') return { load: null, aim: null, says: comeback.message };
      return { load: comeback.start.shown, aim: comeback.reps, says: comeback.says };
    }
    default:
      return { load: advice.load.shown, aim: advice.aim, says: advice.says };
  }
}

/** A name as it can stand in the name of a file. */
function slug(name: string): string {
  const plain = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'session';
}
