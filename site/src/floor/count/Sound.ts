/** A sound of the count, by what it tells. */
export type ToneName =
  | 'lead-in'
  | 'lift'
  | 'lower'
  | 'pause'
  /** A further second of a phase. */
  | 'second'
  /** With the first phase of a repetition that is in the window. */
  | 'window'
  /** The count, a hold or a lowering is over. */
  | 'end'
  | 'rest-near'
  | 'rest-over';

/** A sound and when it is heard, in seconds from the start of what is counted. */
export interface Sound {
  readonly atSeconds: number;
  readonly tone: ToneName;
}
