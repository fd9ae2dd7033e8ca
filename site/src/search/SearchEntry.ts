/** Kinds of what can be found, in the order in which they are shown. */
export const groups = ['tools', 'guides', 'pages', 'reference'] as const;

export type Group = (typeof groups)[number];

/** One thing that can be found: a page, a section of one, a tool. */
export interface SearchEntry {
  readonly id: number;
  readonly group: Group;
  /** Its address under the base path, with the place on the page: `guides/pairs/#order`. */
  readonly path: string;
  /** Of the page, or the name of what a page of the reference documents. */
  readonly title: string;
  /** Heading of the section; empty for a whole page. */
  readonly section: string;
  /** What is shown below it and searched. */
  readonly text: string;
  /** Searched and not shown: names of fields and properties, other words for the same. */
  readonly terms: string;
}
