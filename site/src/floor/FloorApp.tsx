import { useAwake } from '@windlass/calculators/ui';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { href } from '../lib/href.ts';
import { encodePlan } from '../planner/link/encodePlan.ts';
import { Notice } from '../planner/Notice.tsx';
import type { Json } from '../planner/state/tree.ts';
import { playSounds } from './count/playSounds.ts';
import { useAudio } from './count/useAudio.ts';
import { useCatchUp } from './count/useCatchUp.ts';
import { useCountSignals } from './count/useCountSignals.ts';
import { wallNow } from './count/wallClock.ts';
import { fetchDesk } from './later.ts';
import { effectiveEvents } from './run/effectiveEvents.ts';
import { foldEvents } from './run/foldEvents.ts';
import type { FloorSession } from './session/FloorSession.ts';
import { useFinding } from './useFinding.ts';
import { usePlanned } from './usePlanned.ts';
import { useRun } from './useRun.ts';
import { DialogContext, type DialogName } from './view/DialogContext.ts';
import { type Floor, FloorContext } from './view/FloorContext.ts';
import { FloorDialogs } from './view/FloorDialogs.tsx';
import { Gate } from './view/Gate.tsx';
import { SetList } from './view/SetList.tsx';
import { ToldSigns } from './view/SignsDialog.tsx';
import { Stage } from './view/Stage.tsx';
import { useCountSettings } from './view/useCountSettings.ts';
import { words } from './words.ts';

interface FloorAppProps {
  /** The session that the page opens with. */
  readonly served: FloorSession;
}

/** Time for the sound to get going before the first tone of a count, in seconds. */
const START_SECONDS = 0.2;

/** The whole floor page: one set at a time, and under it all of them. */
export function FloorApp({ served }: FloorAppProps) {
  const run = useRun(served);
  const { session, events, say, add } = run;
  const [settings, set] = useCountSettings();
  const [dialog, setDialog] = useState<DialogName | number | null>(null);
  const state = useMemo(() => foldEvents(session, events), [session, events]);
  const effective = useMemo(() => effectiveEvents(events), [events]);
  const isFollowed = events.length > 0 && state.phase !== 'over';
  useFinding(run, state);
  const planned = usePlanned(
    run.plan,
    state.phase === 'over' || dialog === 'load' || dialog === 'carry-on',
  );
  const { audio, isBlocked, wake } = useAudio(settings.sound);
  const isDarkening = useAwake(isFollowed);
  const [hasSeenDark, setSeenDark] = useState(false);
  useCatchUp(session, state, add);
  useCountSignals(session, state, settings, audio);
  const planHref = usePlanHref(run.plan);

  useEffect(() => {
    if (run.status.kind !== 'opening') document.documentElement.classList.remove('opening');
  }, [run.status.kind]);
  const stage = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (events.length > 0 && (stage.current?.getBoundingClientRect().top ?? 0) < 0) {
      stage.current?.scrollIntoView({ block: 'start' });
    }
  }, [state.phase, state.step]);
  useEffect(() => {
    setTimeout(() => void fetchDesk().catch(() => {}), 500);
  }, []);

  const floor: Floor = { session, state, effective, settings, set, say, add, audio };
  const leadIn = () => settings.leadInSeconds + START_SECONDS;
  const open = (name: DialogName) => {
    if (name === 'signs' && state.phase === 'lifting') say({ kind: 'stopped' });
    setDialog(name);
  };
  const isSounding =
    state.running?.count != null || state.phase === 'past-failure' || state.rest !== null;
  return (
    <FloorContext.Provider value={floor}>
      <DialogContext.Provider value={open}>
        <div class="floor" data-phase={state.phase} data-written={run.isWritten}>
          <h1 class="visually-hidden">
            {words.title}: {words.of(session.client, session.gym)}
          </h1>
          <div class="floor-stage" ref={stage}>
            {run.notice !== null && <Notice message={run.notice} onDismiss={run.dismiss} />}
            {isDarkening && !hasSeenDark && (
              <p class="floor-note">
                {words.awake.refused}
                <button type="button" class="wl-button" onClick={() => setSeenDark(true)}>
                  {words.awake.seen}
                </button>
              </p>
            )}
            {isBlocked && isFollowed && isSounding && (
              <p class="floor-note">
                {words.sound.blocked}
                <button type="button" class="wl-button" onClick={wake}>
                  {words.sound.touch}
                </button>
              </p>
            )}
            <ToldSigns />
            <Gate run={run}>
              <Stage
                run={run}
                planned={planned}
                onStart={() => {
                  wake();
                  say({
                    kind: 'begun',
                    leadInSeconds: settings.counted ? leadIn() : 0,
                    counted: settings.counted,
                  });
                }}
                onCountOn={() => say({ kind: 'counted-on', leadInSeconds: leadIn() })}
                onPutRight={setDialog}
              />
            </Gate>
          </div>
          <SetList planHref={planHref} />
        </div>
        <FloorDialogs
          open={dialog}
          planned={planned}
          onOpen={setDialog}
          onClose={() => setDialog(null)}
          onTest={() => {
            const context = wake();
            if (context) testTones(context);
          }}
        />
      </DialogContext.Provider>
    </FloorContext.Provider>
  );
}

/** The planner's address with this plan in it. */
function usePlanHref(plan: Json): string {
  const [fragment, setFragment] = useState('');
  useEffect(() => {
    void encodePlan(plan).then(setFragment);
  }, [plan]);
  return fragment === '' ? href('/plan/') : `${href('/plan/')}#${fragment}`;
}

const TEST = ['lift', 'lower', 'pause', 'second', 'end'] as const;

function testTones(context: AudioContext): void {
  const sounds = TEST.map((tone, place) => ({ tone, atSeconds: place * 0.7 }));
  const stop = playSounds({ context, sounds, startsAt: wallNow() + 200, now: wallNow });
  setTimeout(stop, TEST.length * 1000);
}
