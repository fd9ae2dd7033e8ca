import type { Source } from '@windlass/core/basis';
import type { LoadValue } from '@windlass/core/load';
import type { Caution } from '@windlass/core/safety';
import type { ComponentChildren } from 'preact';
import type { Fields, InputOf } from '../fields/Field.ts';
import type { Certainty, Headline, NextLink, NoAnswer, Why } from './Answer.ts';

/** Fields that are shown together. A folded group opens on a press, or when it holds a wrong value. */
export interface FieldGroup<Name extends string> {
  readonly legend: string;
  readonly fields: readonly Name[];
  readonly folded?: boolean;
}

/** A result that `compute` gives, or the reason why there is none. */
export type Computed<Result> = { readonly kind: 'result'; readonly result: Result } | NoAnswer;

/** One calculator, stated once; everything else about it is derived. */
export interface Definition<F extends Fields, Result> {
  /** Also its address: lower case with hyphens. */
  readonly id: string;
  readonly title: string;
  /** The question it answers, in plain words. */
  readonly question: string;
  readonly fields: F;
  /** Every field in exactly one group. */
  readonly groups: readonly FieldGroup<keyof F & string>[];
  /** Pure; never throws and never gives NaN for an input that the fields allow. */
  readonly compute: (input: InputOf<F>) => Computed<Result>;
  readonly headline: (input: InputOf<F>, result: Result) => Headline;
  readonly certainty: (input: InputOf<F>, result: Result) => Certainty;
  readonly why: (input: InputOf<F>, result: Result) => Why;
  readonly cautions: (input: InputOf<F>, result: Result) => readonly Caution[];
  readonly sources: (input: InputOf<F>, result: Result) => readonly Source[];
  readonly next: (input: InputOf<F>, result: Result) => readonly NextLink[];
  readonly snippet: (input: InputOf<F>, result: Result) => string;
  readonly view: (input: InputOf<F>, result: Result) => ComponentChildren;
  readonly details?: (input: InputOf<F>, result: Result) => ComponentChildren;
  /** The load one step of the equipment away, for the stepper of a load field; `null` for the plain step. */
  readonly stepLoad?: (
    name: keyof F & string,
    input: InputOf<F>,
    direction: 1 | -1,
  ) => LoadValue | null;
  /** The values that a new row of a rows field starts with; `null` for a copy of the last row. */
  readonly newRow?: (
    name: keyof F & string,
    input: InputOf<F>,
  ) => Readonly<Record<string, unknown>> | null;
}
