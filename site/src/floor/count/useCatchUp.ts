import { phasesOfRep } from '@windlass/core/tempo';
import { useEffect } from 'preact/hooks';
import type { FloorEvent } from '../run/FloorEvent.ts';
import type { FloorState } from '../run/FloorState.ts';
import { countedTo } from '../session/countedTo.ts';
import type { FloorSession } from '../session/FloorSession.ts';
import { repMilliseconds } from './countAt.ts';
import { wallNow } from './wallClock.ts';

/** Tells every repetition of a count when it is over; after a busy or hidden while all that are. */
export function useCatchUp(
  session: FloorSession,
  state: FloorState,
  add: (events: readonly FloorEvent[]) => void,
): void {
  const count = state.running?.count;
  const step = session.steps[state.step];
  const lift = step && session.lifts[step.lift];
  useEffect(() => {
    if (!count || !step || !lift) return;
    const rep = repMilliseconds(phasesOfRep(lift.tempo, { startsWith: lift.startsWith }));
    const most = countedTo(step, lift) - count.repsBefore;
    if (count.told >= most) return;
    const ends = (told: number) => count.startsAt + (told + 1) * rep;
    let timer: ReturnType<typeof setTimeout> | undefined;
    // Timers may come a little early; then nothing is due yet, and it is waited again.
    const wait = () => {
      timer = setTimeout(tell, Math.max(1, ends(count.told) - wallNow()));
    };
    const tell = () => {
      const due = Math.min(most, Math.floor((wallNow() - count.startsAt) / rep));
      if (due <= count.told) return wait();
      const places = Array.from({ length: due - count.told }, (_, more) => count.told + more);
      add(places.map((told) => ({ kind: 'rep', by: 'count', at: ends(told) })));
    };
    wait();
    return () => clearTimeout(timer);
  }, [count?.startsAt, count?.told, state.step]);
}
