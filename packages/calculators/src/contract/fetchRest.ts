/**
 * Fetches what stands below the answer of a calculator: reasons, details, code, the long texts of
 * cautions. `null` where it is there from the start; in browsers the build puts the fetching here.
 */
export const fetchRest: (() => Promise<void>) | null = null;
