import type { LoadKind, Station } from '../anatomy/index.ts';
import type { FixedWeights } from '../equipment/index.ts';

/** What there is to train with. The own body and the floor are always there. */
export interface AtHand {
  readonly loads: readonly LoadKind[];
  /** Forms of one-piece weights; dumbbells when it is left out. */
  readonly fixedForms?: readonly FixedWeights['form'][];
  readonly stations: readonly Station[];
}
