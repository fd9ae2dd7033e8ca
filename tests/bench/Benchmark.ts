/** One benchmark: something of the library beside an independent way to the same answer. */
export interface Bench {
  readonly id: string;
  readonly title: string;
  readonly run: (options: BenchOptions) => Promise<Measured>;
}

export interface BenchOptions {
  /** Fewer and smaller cases, for a look within two minutes. */
  readonly quick: boolean;
}

/** What came of it. */
export interface Measured {
  /** For a reader. */
  readonly lines: readonly string[];
  readonly ratios?: readonly Ratio[];
  readonly sizes?: readonly Size[];
}

/** How many times as fast, or as good: more is better. Held against the baseline with a margin. */
export interface Ratio {
  readonly id: string;
  readonly value: number;
  /** Fails below, whatever the baseline says. */
  readonly atLeast?: number;
}

/** Bytes after gzip: less is better. */
export interface Size {
  readonly id: string;
  readonly bytes: number;
}
