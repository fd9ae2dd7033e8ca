/** An attribute of an embedded calculator that cannot be taken. Plain data. */
export interface AttributeProblem {
  /** The calculator that was asked for. */
  readonly calculator: string;
  /** The name of the attribute. */
  readonly attribute: string;
  /** What it said. */
  readonly value: string;
  /** Stable: `element.unknown-attribute`, or the code of the field's problem. */
  readonly code: string;
  /** What is wrong, what would be right, and what is shown instead. */
  readonly message: string;
}
