/** Where a figure comes from, and how it was read. */
export interface Source {
  /** Stable name, also used in tests and on the evidence page: `nuzzo-2024`. */
  readonly id: string;
  readonly citation: string;
  readonly doi?: string;
  /**
   * `verified`: read in the publication; `recalled`: from memory of the literature, so it is
   * shown but proves nothing; `derived`: arithmetic on verified figures; `convention`: a choice
   * the trade or this project made, not a measurement.
   */
  readonly standing: 'verified' | 'recalled' | 'derived' | 'convention';
}
