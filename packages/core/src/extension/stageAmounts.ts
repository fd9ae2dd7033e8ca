/** What a stage may be asked for. Conventions of this project, not measurements. */
export const stageAmounts = {
  /** More stages than this in one set are refused. */
  stages: 8,
  holdSeconds: { min: 3, max: 60 },
  loweringSeconds: { min: 3, max: 15 },
  lowerings: { min: 1, max: 10 },
  pauseSeconds: { min: 5, max: 60 },
  lighterShare: { min: 0.5, max: 0.95 },
  partReps: { min: 1, max: 10 },
  /** Published help rose from a fifth of the load on the first to a third on the second. */
  assistedReps: { min: 1, max: 2 },
  /** Longest stop at an easy position on the way to lowering. */
  easyHoldSeconds: 10,
} as const;
