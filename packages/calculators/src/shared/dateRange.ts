/** The dates that a calendar of training can have. */
export const dateRange = { min: '2000-01-01', max: '2099-12-31' } as const;
