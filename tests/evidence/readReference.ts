import { readFileSync } from 'node:fs';

/** A cell of a published table. */
export type Cell = string | number | null;

/** Published rows as they were copied into this project, with where they come from. */
export interface Reference {
  readonly id: string;
  readonly title: string;
  readonly citation: string;
  readonly doi?: string | null;
  readonly provenance: 'verified' | 'recalled' | 'derived' | 'mixed';
  readonly confidence: 'high' | 'medium' | 'low';
  readonly columns: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

/** The rows of one data set in `tests/reference`. */
export function readReference(id: string): Reference {
  return JSON.parse(readFileSync(new URL(`../reference/${id}.json`, import.meta.url), 'utf8'));
}
