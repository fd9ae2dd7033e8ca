import { readFileSync } from 'node:fs';

/** Published rows as they were copied into this project, with where they come from. */
export interface Reference {
  readonly id: string;
  readonly citation: string;
  readonly provenance: 'verified' | 'recalled';
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** The rows of one data set in `tests/reference`. */
export function readReference(id: string): Reference {
  return JSON.parse(readFileSync(new URL(`../reference/${id}.json`, import.meta.url), 'utf8'));
}
