/** What stands in place of a part whose code could not be fetched. */
export const words = {
  fetchFailed: 'This part could not be fetched. See to the connection and open it again.',
} as const;
