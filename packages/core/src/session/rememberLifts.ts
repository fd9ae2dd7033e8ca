import { type LiftPlanner, type LiftQuestion, planLift } from './planLift.ts';

/**
 * A planner of lifts that answers a question it has had before from memory, for applications that
 * plan again at every change: only the lifts that a change touches are worked out.
 *
 * A lift is asked about anew when anything differs that its plan follows from: what is wanted, the
 * equipment and how it is used, the lift's own sets, experience, whether alone, limits, day, the state
 * in which the lifts before it leave the muscles, and the lift that it is done in rounds with.
 *
 * @param most answers that are kept; the one longest unused is forgotten first.
 * @param planOne who works an answer out.
 * @example
 * ```ts
 * import { planSession, rememberLifts } from '@windlass/core/session';
 * import { readSessionFile } from '@windlass/core/schema';
 * const file = readSessionFile({
 *   client: { name: 'Winch hand', experience: 'some', alone: true, health: {}, sets: [] },
 *   gym: {
 *     name: 'Boathouse',
 *     plates: [],
 *     equipment: [{ kind: 'stack', id: 'cable', name: 'Cable', first: '5 kg', rest: [], pulleyRatio: 1 }],
 *   },
 *   intent: { date: '2027-03-15', unit: 'kg', changeSeconds: 120, lifts: [
 *     { exercise: 'cable-row', equipment: 'cable', window: { minReps: 8, maxReps: 11 }, tempo: '3-0-1-0', sets: 1, restSeconds: 120 },
 *   ] },
 * });
 * const planOne = rememberLifts();
 * const first = file.ok && planSession(file.value, planOne);
 * const again = file.ok && planSession(file.value, planOne);
 * first && again && first.kind === 'session' && again.kind === 'session' && first.lifts[0] === again.lifts[0]; // true
 * ```
 */
export function rememberLifts(most = 64, planOne: LiftPlanner = planLift): LiftPlanner {
  const known = new Map<string, ReturnType<LiftPlanner>>();
  return (question) => {
    const key = keyOf(question);
    const answer = known.get(key) ?? planOne(question);
    known.delete(key);
    known.set(key, answer);
    const [oldest = key] = known.keys();
    if (known.size > most) known.delete(oldest);
    return answer;
  };
}

function keyOf(question: LiftQuestion): string {
  const { lift, client, gym, date, limits, start, warm, overruled, refused, skipSteps } = question;
  const { joined, skipChain, chosenFor } = question;
  const { intent, exercise, equipment } = lift;
  const sets = client.sets.filter(
    (set) => set.exercise === exercise.id && set.equipment === equipment.id,
  );
  const { bodyWeight, experience, alone } = client;
  const person = { bodyWeight, experience, alone, sets, limits };
  const place = { equipment, plates: gym.plates };
  const wishes = { intent, overruled, refused, skipSteps, skipChain, chosenFor };
  const beside = joined && keyOf(joined.second);
  return JSON.stringify([wishes, exercise, place, person, date, start, [...warm], beside]);
}
