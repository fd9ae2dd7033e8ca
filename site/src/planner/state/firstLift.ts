/** What a lift starts with where there is none before it to follow. */
export const firstLift = {
  window: { minReps: 8, maxReps: 12 },
  tempo: '3-0-2-0',
  sets: 1,
  restSeconds: 120,
} as const;
