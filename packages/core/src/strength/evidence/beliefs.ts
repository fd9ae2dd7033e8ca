import type { LogDensity } from '../grid/Axis.ts';
import { weightsOf } from '../grid/weightsOf.ts';
import type { StrengthBelief, StrengthPosterior } from '../StrengthPosterior.ts';
import type { BeliefState } from './BeliefState.ts';

/** The working state of a stored posterior. */
export function stateOf({
  day,
  lnMax,
  lnKappa,
  usual,
  today,
  session,
}: StrengthPosterior): BeliefState {
  return {
    day,
    usual: logsOf({ lnMax, lnKappa, chances: usual }),
    today: logsOf({ lnMax, lnKappa, chances: today }),
    before: logsOf(session.before),
    sets: session.sets,
  };
}

/** The stored form of a working state. */
export function posteriorOf(
  state: BeliefState,
  alpha: number,
  binding: StrengthPosterior['binding'],
): StrengthPosterior {
  const { lnMax, lnKappa, chances } = beliefOf(state.usual);
  return {
    kind: 'posterior',
    day: state.day,
    alpha,
    lnMax,
    lnKappa,
    usual: chances,
    today: beliefOf(state.today).chances,
    binding,
    session: { before: beliefOf(state.before), sets: state.sets },
  };
}

function logsOf({ lnMax, lnKappa, chances }: StrengthBelief): LogDensity {
  const logs = Float64Array.from(chances, (chance) => Math.log(Math.max(chance, 1e-300)));
  return { columns: lnMax, rows: lnKappa, logs };
}

/** Probabilities of a density. */
export function beliefOf({ columns, rows, logs }: LogDensity): StrengthBelief {
  return { lnMax: columns, lnKappa: rows, chances: Array.from(weightsOf(logs)) };
}
