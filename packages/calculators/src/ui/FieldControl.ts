import type { Texts } from '../fields/Field.ts';
import type { FieldProblem } from '../fields/FieldProblem.ts';

/** What every control is given: its text, where to say that it changed, and what is wrong with it. */
export interface ControlProps<F> {
  readonly id: string;
  readonly field: F;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly problems: readonly FieldProblem[];
  /** Name for the parts of the control, and for a control without a visible label of its own. */
  readonly label: string;
  /** The control has no visible label of its own and is named by `label`. */
  readonly isBare?: boolean;
  readonly describedBy?: string;
  /** All texts of the form, for a control that depends on another field. */
  readonly texts?: Texts;
  /** The text one step of the equipment away; `null` for the plain step. */
  readonly equipmentStep?: (direction: 1 | -1) => string | null;
  /** The texts of a new row; `null` for a copy of the last one. */
  readonly newRow?: () => readonly string[] | null;
}
