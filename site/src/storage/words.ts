import type { Failure } from './Failure.ts';

/** What a failure of the browser's database means, and what to do about it. */
export const words = {
  failure: {
    denied:
      'This browser lets the page keep nothing: a private window or a setting forbids it. What is on the page stays until it is closed; save it as a file.',
    full: 'There is no room left in this browser, so nothing was kept. What is on the page stays; save it as a file, or make room and try again.',
    blocked:
      'An older Windlass is open in another tab and holds the kept data. Close that tab, then try again.',
    newer:
      'The kept data was written by a newer Windlass than this page, so it is left alone. Load the page again to get the newer one.',
    closed:
      'The browser closed the kept data under way, so nothing was kept. Load the page again; what is on it can be saved as a file before.',
    other: 'The browser could not do that, and nothing was changed.',
  } satisfies Record<Failure['reason'], string>,
  /** The sentence for a failure, with what the browser said where the reason alone tells little. */
  failed: ({ reason, detail }: Failure): string =>
    reason === 'other' || reason === 'denied'
      ? `${words.failure[reason]} (${detail})`
      : words.failure[reason],
};
