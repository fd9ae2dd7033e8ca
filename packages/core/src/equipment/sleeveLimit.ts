/** The sleeve limit as an optional field, absent where there is none. */
export function sleeveLimit({ sleeveMm }: { readonly sleeveMm?: number }): {
  readonly sleeveMm?: number;
} {
  return sleeveMm === undefined ? {} : { sleeveMm };
}
