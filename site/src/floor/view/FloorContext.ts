import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { EffectiveEvents } from '../run/effectiveEvents.ts';
import type { FloorEvent, FloorHappening } from '../run/FloorEvent.ts';
import type { FloorState } from '../run/FloorState.ts';
import type { FloorLift, FloorSession, FloorStep } from '../session/FloorSession.ts';
import type { CountSettings } from './useCountSettings.ts';

/** What every part of the page can know and say. */
export interface Floor {
  readonly session: FloorSession;
  readonly state: FloorState;
  /** What counts of what has happened, and what was taken back. */
  readonly effective: EffectiveEvents;
  readonly audio: AudioContext | null;
  readonly settings: CountSettings;
  readonly set: (change: Partial<CountSettings>) => void;
  readonly say: (...what: readonly FloorHappening[]) => void;
  /** Adds what happened at its own time. */
  readonly add: (events: readonly FloorEvent[]) => void;
}

export const FloorContext = createContext<Floor | null>(null);

export function useFloor(): Floor {
  const floor = useContext(FloorContext);
  if (!floor) throw new RangeError('useFloor: there is no floor around this part');
  return floor;
}

/** The step that is done or comes next, with its lift; nothing where no step is left. */
export function useStep(): { readonly step: FloorStep; readonly lift: FloorLift } | null {
  const { session, state } = useFloor();
  const step = session.steps[state.step];
  const lift = step && session.lifts[step.lift];
  return step && lift && state.phase !== 'over' ? { step, lift } : null;
}
