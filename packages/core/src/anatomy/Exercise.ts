import type { Equipment, FixedWeights, MovedShare } from '../equipment/index.ts';
import type { JointAction, PositionId } from './Joint.ts';
import type { Movement } from './Movement.ts';
import type { ExerciseShares } from './Muscle.ts';

/** What provides the load, by the kinds of `@windlass/core/equipment`. */
export type LoadKind = Equipment['kind'];

/** What else must be there: a machine of that movement, a bench, a bar to hang from. */
export type Station =
  | 'flat-bench'
  | 'incline-bench'
  | 'upright-bench'
  | 'chair'
  | 'rack'
  | 'step'
  | 'wall'
  | 'chin-up-bar'
  | 'dip-bars'
  | 'low-bar'
  | 'landmine'
  | 'back-extension-bench'
  | 'preacher-bench'
  | 'trap-bar'
  | 'cable'
  | 'high-pulley'
  | 'seated-cable-row'
  | 'guided-bar'
  | 'chest-press-machine'
  | 'incline-press-machine'
  | 'shoulder-press-machine'
  | 'fly-machine'
  | 'dip-machine'
  | 'row-machine'
  | 'pulldown-machine'
  | 'pullover-machine'
  | 'assisted-chin-dip-machine'
  | 'lateral-raise-machine'
  | 'curl-machine'
  | 'triceps-machine'
  | 'leg-press-machine'
  | 'hack-squat-machine'
  | 'leg-extension-machine'
  | 'seated-leg-curl-machine'
  | 'lying-leg-curl-machine'
  | 'hip-thrust-machine'
  | 'glute-machine'
  | 'hip-abduction-machine'
  | 'hip-adduction-machine'
  | 'standing-calf-machine'
  | 'seated-calf-machine'
  | 'crunch-machine'
  | 'back-extension-machine'
  | 'rotary-torso-machine';

/** How the body is held; `lying` is on the back. */
export type Support =
  | 'standing'
  | 'seated'
  | 'seated-with-back'
  | 'lying'
  | 'side-lying'
  | 'face-down'
  | 'chest-supported'
  | 'hand-supported'
  | 'hands-and-feet'
  | 'hanging'
  | 'kneeling';

/** A place in the movement where the load can be held still. */
export interface HoldPosition {
  /** By the length of the muscles that lift. */
  readonly at: 'stretched' | 'middle' | 'contracted';
  /**
   * The load's turning effect there, as a share of what it is where the lift fails (1 = the same).
   * A convention read from the geometry of the movement, not a measurement.
   */
  readonly momentArm: number;
}

/** How the load gets back to the top for another lowering when it can no longer be lifted. */
export type WayBack =
  | 'step-up'
  | 'other-limb'
  | 'both-limbs'
  | 'legs-push'
  | 'hands-push'
  | 'set-down-and-restart'
  | 'partner-only';

/** What happens to someone alone when the lift fails. */
export type AtFailureAlone =
  /** The load returns to its rest, or is put or let down, and nobody is under it. */
  | 'leave'
  /** Only with stops, pins or a rack set and tested at the bottom. */
  | 'needs-stops'
  /** Not to failure without a partner. */
  | 'needs-partner';

/** Which endurance constant to start from: how slowly reps fall off as the load grows. */
export type EnduranceClass =
  | 'squat'
  | 'leg-press'
  | 'hinge'
  | 'press'
  | 'overhead-press'
  | 'pull'
  | 'leg-isolation'
  | 'arm-isolation'
  | 'trunk';

/** A set-up of the same exercise that changes what it asks of muscles or joints. */
export interface Variant {
  readonly id: string;
  readonly name: string;
  readonly changes:
    | 'range'
    | 'grip'
    | 'elbow-path'
    | 'lean'
    | 'seat'
    | 'stance'
    | 'support'
    | 'straps'
    | 'one-side';
  /** What is different for muscles or joints, one sentence. */
  readonly effect: string;
  /** Loaded positions this set-up takes away. */
  readonly removes?: readonly PositionId[];
  /** Loaded positions this set-up brings in. */
  readonly adds?: readonly PositionId[];
  /** Stations needed besides the exercise's own. */
  readonly stations?: readonly Station[];
  readonly support?: Support;
  readonly hands?: 0 | 1 | 2;
  readonly wayBack?: WayBack;
  readonly movedShare?: MovedShare;
  /** Shares, when the set-up moves work to other muscles: both or neither. */
  readonly direct?: ExerciseShares;
  readonly indirect?: ExerciseShares;
}

/** One exercise: a movement with one way of loading it. */
export interface Exercise {
  readonly id: string;
  /** In trade terms. */
  readonly name: string;
  readonly movement: Movement;
  /** Any one of these can provide the load. */
  readonly loads: readonly LoadKind[];
  /** Which one-piece weights fit, where `loads` has `fixed`; dumbbells when it is not given. */
  readonly fixedForms?: readonly FixedWeights['form'][];
  /** All of these must be there. */
  readonly stations: readonly Station[];
  readonly direct: ExerciseShares;
  readonly indirect: ExerciseShares;
  readonly actions: readonly JointAction[];
  readonly positions: readonly PositionId[];
  readonly startsWith: 'lower' | 'lift';
  /** Held or carried for seconds instead of repeated. */
  readonly timed?: true;
  readonly sides: 'both' | 'one';
  readonly span: 'compound' | 'isolation';
  readonly support: Support;
  /** Hands that grip, push, hang or lean under load. */
  readonly hands: 0 | 1 | 2;
  /** Where one dumbbell or kettlebell is the load although two hands are on something. */
  readonly heldWeights?: 1;
  /** Share of body weight that is the load: where `loads` has `body`, and only there. */
  readonly movedShare?: MovedShare;
  readonly holds: readonly HoldPosition[];
  readonly wayBack: WayBack;
  readonly atFailureAlone: AtFailureAlone;
  /** Lowering strength against lifting strength: 1.25 for free weights, 1.4 for machines. */
  readonly eccentricFactor: number;
  readonly endurance: EnduranceClass;
  readonly variants: readonly Variant[];
}
