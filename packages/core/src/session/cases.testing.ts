import fc from 'fast-check';

/** Cases for a law whose cases take longer or less long than usual, as a share of the usual number. */
export function casesTimes(share: number): { readonly numRuns: number } {
  return { numRuns: Math.ceil(share * (fc.readConfigureGlobal().numRuns ?? 100)) };
}
