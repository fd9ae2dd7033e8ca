import type { LoadValue } from '../load/index.ts';

/**
 * One plate. Two plates are the same only when every field is: a thick and a thin 20 kg plate are
 * two kinds.
 */
export interface Plate {
  readonly weight: LoadValue;
  /** What it takes up on a sleeve. A plate without it takes no room in the reckoning. */
  readonly thicknessMm?: number;
  /** For drawings and for the height of a bar on the floor. */
  readonly diameterMm?: number;
}

/** Plates of one kind, counted by the piece: an odd piece is there, but not in mirrored loadings. */
export interface PlateStock extends Plate {
  readonly pieces: number;
}

/** Things of one weight, counted by the piece: dumbbells, magnets, stack add-ons, small kettlebells. */
export interface PieceStock {
  readonly weight: LoadValue;
  readonly pieces: number;
}

interface Item {
  /** Stable; a log keeps it beside the load, because numbers of two machines never compare. */
  readonly id: string;
  readonly name: string;
}

interface PlateLoaded extends Item {
  /** Plates that fit only here. Without it, the plates that the whole gym shares. */
  readonly plates?: readonly PlateStock[];
  /** Length of one sleeve that is free for plates, the collar already taken off. No limit without it. */
  readonly sleeveMm?: number;
}

/** Any bar with two sleeves: straight, trap, angled or cambered. Its weight is never assumed. */
export interface Barbell extends PlateLoaded {
  readonly kind: 'barbell';
  readonly bar: LoadValue;
  /** Weight of one collar; a bar in use carries two. */
  readonly collar?: LoadValue;
}

/** One stack of plates on one post. */
export interface OnePost extends PlateLoaded {
  readonly kind: 'one-post';
  readonly form: 'landmine' | 'loading-pin' | 'belt';
  /** What moves with no plate on: the pin, the belt and its chain, the bar end of a landmine. */
  readonly base: LoadValue;
}

/** Weights that come in one piece, with the steps and the gaps that the rack really has. */
export interface FixedWeights extends Item {
  readonly kind: 'fixed';
  readonly form: 'dumbbell' | 'kettlebell' | 'barbell';
  readonly weights: readonly PieceStock[];
  /** Magnets or cuffs that go on such a weight. */
  readonly addOns?: readonly PieceStock[];
}

/** Dumbbell handles for plates: both ends of each handle carry the same. */
export interface AdjustableHandles extends PlateLoaded {
  readonly kind: 'handles';
  /** One handle with its collars. */
  readonly handle: LoadValue;
  readonly handles: 1 | 2;
}

/** A stack with a pin. The pin number is the sum of all plates down to the pin. */
export interface SelectorStack extends Item {
  readonly kind: 'stack';
  /** The top plate with what moves along with it. */
  readonly first: LoadValue;
  /** The plates below it, from the top down; uneven ones are listed one after another. */
  readonly rest: readonly PieceStock[];
  readonly addOns?: readonly PieceStock[];
  /** Stack weight to handle force: 1 for 1:1, 2 for 2:1, where the handle has half of the stack. */
  readonly pulleyRatio: number;
}

/** A machine or guided bar for plates. What it resists with when empty is known or said to be unknown. */
export interface PlateMachine extends PlateLoaded {
  readonly kind: 'machine';
  readonly posts: 1 | 2;
  /** The moving part without plates: sled, arm, guided bar less its counterweight. */
  readonly start: LoadValue | 'unknown';
  /** Force at the handle for each unit of moved mass; 1 when it is not given. */
  readonly leverRatio?: number;
  /** Rail against the floor: 90 upright, 45 for a leg press. 90 when it is not given. */
  readonly railDegrees?: number;
}

/** A place where the person is the load, with weight hung on or taken off. */
export interface BodyStation extends Item {
  readonly kind: 'body';
  /** A belt or vest for plates (the gym's, or its own) and for whole pieces. None without it. */
  readonly belt?: {
    /** The belt with its chain; 0 when it is not given. */
    readonly base?: LoadValue;
    readonly plates?: readonly PlateStock[];
    readonly pieces?: readonly PieceStock[];
  };
  /** The amounts of help that the machine offers, as positive weights. */
  readonly assistance?: readonly LoadValue[];
}

/** An elastic band. Its resistance changes with every centimetre and is not known in advance. */
export interface ElasticBand extends Item {
  readonly kind: 'band';
}

/** Anything that gives a load, told apart by `kind`. Plain data: it can go into a file as it is. */
export type Equipment =
  | Barbell
  | OnePost
  | FixedWeights
  | AdjustableHandles
  | SelectorStack
  | PlateMachine
  | BodyStation
  | ElasticBand;

/** What a room holds. */
export interface Gym {
  readonly name: string;
  /** Shared by everything that takes plates and has none of its own. */
  readonly plates: readonly PlateStock[];
  readonly equipment: readonly Equipment[];
}

/** Share of body weight that is moved, lowest and highest over the positions of one repetition. */
export interface MovedShare {
  readonly low: number;
  readonly high: number;
}

/** How a piece of equipment is used: by whom, in which hands, with which plates. */
export interface EquipmentUse {
  /** The gym's shared plates; none when it is not given. */
  readonly plates?: readonly PlateStock[];
  /** Dumbbells and handles: one weight, or one in each hand. 2 when it is not given. */
  readonly hands?: 1 | 2;
  /** Needed where the person is the load. */
  readonly bodyWeight?: LoadValue;
  /** The whole body (1 to 1) when it is not given. */
  readonly movedShare?: MovedShare;
}
