import type { ComponentChildren } from 'preact';
import { fetchDesk } from '../later.ts';
import type { RunControl } from '../useRun.ts';
import { words } from '../words.ts';
import { timeWords } from './clockWords.ts';
import { Primary } from './Primary.tsx';

interface GateProps {
  readonly run: RunControl;
  readonly children: ComponentChildren;
}

/** The session, unless another tab has it or another one has not been ended. */
export function Gate({ run, children }: GateProps) {
  const { status } = run;
  if (status.kind === 'elsewhere') {
    return (
      <>
        <div class="floor-set">
          <h2>{words.elsewhere.title}</h2>
          <p role="status">{words.elsewhere.says}</p>
        </div>
        <div class="floor-actions">
          <Primary name={words.elsewhere.take} focusOn="take" onPress={run.takeOver} />
        </div>
      </>
    );
  }
  if (status.kind !== 'other') return <>{children}</>;
  const { session, startedAt } = status.run;
  return (
    <>
      <div class="floor-set">
        <h2>{words.other.title}</h2>
        <p>{words.other.says(session.client, timeWords(Date.parse(startedAt)))}</p>
        <p>{words.other.endSays}</p>
      </div>
      <div class="floor-actions">
        <Primary name={words.other.goOn} focusOn="go-on" onPress={run.goOn} />
        <button type="button" class="floor-second" onClick={() => endOther(run)}>
          {words.other.end}
        </button>
      </div>
    </>
  );
}

/** Ends the session that goes on, into its log, and begins the one of the address. */
async function endOther({ status, end, beginAgain }: RunControl): Promise<void> {
  if (status.kind !== 'other') return;
  const { logOf } = await fetchDesk();
  const kept = await end(logOf(status.run), status.run);
  if (kept.kind === 'kept') beginAgain();
}
