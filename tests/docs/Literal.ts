/** A value as documentation shows it. */
export type Literal =
  | {
      readonly kind: 'number';
      readonly value: number;
      /** Decimals shown; a whole number shows none and is meant exactly. */
      readonly decimals: number;
    }
  | { readonly kind: 'plain'; readonly value: string | boolean | null | undefined | bigint }
  | { readonly kind: 'array'; readonly items: readonly Literal[] }
  | { readonly kind: 'object'; readonly entries: ReadonlyMap<string, Literal> };
