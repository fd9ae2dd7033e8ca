import type { Fields, Texts } from '../fields/Field.ts';
import type { Answer } from './Answer.ts';
import type { FieldGroup } from './Definition.ts';

/** A calculator as the rest of the package sees it: texts in, an answer out. */
export interface Calculator {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly fields: Fields;
  readonly groups: readonly FieldGroup<string>[];
  /** The texts of the default values. */
  readonly defaults: Texts;
  /** Fetches what stands below an answer; `null` where nothing has to be fetched. */
  readonly fetchRest: (() => Promise<void>) | null;
  /** What these texts give. A text that is missing is the default one. Never throws. */
  readonly answer: (texts: Texts) => Answer;
  /** The text of a load field one step of the equipment up or down; `null` for the plain step. */
  readonly stepLoad: (name: string, texts: Texts, direction: 1 | -1) => string | null;
  /** The texts that a new row of a rows field starts with; `null` for a copy of the last row. */
  readonly newRow: (name: string, texts: Texts) => readonly string[] | null;
}
