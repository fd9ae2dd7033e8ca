import type { LoadValue } from '@windlass/core/load';
import type { Tempo } from '@windlass/core/tempo';
import type { ComponentType } from 'preact';
import type { ControlProps } from '../ui/FieldControl.ts';

/** What every field says about itself. */
export interface FieldFace {
  readonly label: string;
  /** One short sentence under the field; a message about a wrong value takes its place. */
  readonly help: string;
  /** May be left empty; the value is then `null`. */
  readonly optional?: boolean;
  /** Shown, and read, only while this holds; a hidden field has its default value. */
  readonly when?: (texts: Texts) => boolean;
}

/** What was typed, by field name: the whole state of a calculator. */
export type Texts = Readonly<Record<string, string>>;

export interface NumberField extends FieldFace {
  readonly kind: 'number';
  /** Shown beside the number: `reps`, `s`, `%`; empty for a bare number. */
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  /** What one press of the stepper changes; 1 also asks for a whole number. */
  readonly step: number;
  readonly default: number | null;
}

export interface LoadField extends FieldFace {
  readonly kind: 'load';
  readonly minKg: number;
  readonly maxKg: number;
  /** What one press of the stepper changes where the calculator knows nothing finer. */
  readonly step: Readonly<Record<'kg' | 'lb', number>>;
  readonly default: LoadValue | null;
}

export interface TempoField extends FieldFace {
  readonly kind: 'tempo';
  /** Name of the choice field that says which phase is written first; lowering first without it. */
  readonly orderFrom?: string;
  readonly default: string | null;
}

export interface WindowField extends FieldFace {
  readonly kind: 'window';
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly default: CountWindow;
}

export interface CountWindow {
  readonly low: number;
  readonly high: number;
}

export interface ChoiceField extends FieldFace {
  readonly kind: 'choice';
  readonly options: readonly { readonly id: string; readonly label: string }[];
  readonly default: string;
  /** The last choice is offered again on the next visit, under this name. */
  readonly remember?: string;
}

/** Words as somebody wrote them, on one line where it has no control of its own. */
export interface TextField extends FieldFace {
  readonly kind: 'text';
  readonly maxLength: number;
  readonly default: string | null;
  /** Longer texts stay out of the address, and so on this page alone. */
  readonly inAddressUpTo?: number;
  /** What takes the place of one line. */
  readonly control?: ComponentType<ControlProps<TextField>>;
  /** The control has several parts, and the label is that of all. */
  readonly isGroup?: boolean;
}

/** A calendar date, without hours or zone: `2026-03-02`. */
export interface DateField extends FieldFace {
  readonly kind: 'date';
  readonly min: string;
  readonly max: string;
  readonly default: string | null;
}

/** A time of day as a clock on the wall shows it: `18:00`. */
export interface TimeField extends FieldFace {
  readonly kind: 'time';
  readonly default: string | null;
}

export type ScalarField =
  | NumberField
  | LoadField
  | TempoField
  | WindowField
  | ChoiceField
  | TextField
  | DateField
  | TimeField;

export type Columns = Readonly<Record<string, ScalarField>>;

/** Rows of like things: plates by the piece, dumbbells, sets done. */
export interface RowsField extends FieldFace {
  readonly kind: 'rows';
  readonly columns: Columns;
  /** What one row is called: `Plate`, `Set`. */
  readonly rowName: string;
  readonly minRows: number;
  readonly maxRows: number;
  /** `line`: one row on one line; `card`: several lines a row. */
  readonly layout: 'line' | 'card';
  readonly default: readonly Readonly<Record<string, unknown>>[];
}

/** Any number of choices at once: what a place has, what hurts. */
export interface ManyField extends FieldFace {
  readonly kind: 'many';
  readonly options: readonly { readonly id: string; readonly label: string }[];
  readonly default: readonly string[];
}

export type Field = ScalarField | RowsField | ManyField;

export type Fields = Readonly<Record<string, Field>>;

type KindValue = {
  number: number;
  load: LoadValue;
  tempo: Tempo;
  window: CountWindow;
  text: string;
  date: string;
  time: string;
};

type Present<F extends Field> = F extends RowsField
  ? readonly InputOf<F['columns']>[]
  : F extends ChoiceField
    ? F['options'][number]['id']
    : F extends ManyField
      ? readonly F['options'][number]['id'][]
      : F['kind'] extends keyof KindValue
        ? KindValue[F['kind']]
        : never;

/** The value a field gives once its text has been read. */
export type ValueOf<F extends Field> = F extends { readonly optional: true }
  ? Present<F> | null
  : Present<F>;

/** The values of all fields, as `compute` receives them. */
export type InputOf<F extends Fields> = { readonly [Name in keyof F]: ValueOf<F[Name]> };
