/**
 * Fetches the part of the frame that shows what stands below an answer. `null` where it is there
 * from the start; in browsers the build puts the fetching here.
 */
export const fetchFrame: (() => Promise<void>) | null = null;
