/** What `npm run evidence` found, as `report.json` holds it. */
export interface EvidenceReport {
  readonly totals: Totals;
  readonly comparisons: readonly ReportedComparison[];
  readonly copiedFigures: readonly ReportedCopy[];
  readonly notCompared: readonly { readonly table: string; readonly why: string }[];
  readonly calibration: ReportedCalibration;
  readonly sameConstant: ReportedConstant;
}

export interface Share {
  readonly counted: number;
  readonly inside: number;
}

export interface Totals extends Share {
  /** Mean of the shares of the data sets, so that a long one counts no more than a short one. */
  readonly meanShare: number;
  /** Rows that no constant of the library was chosen on. */
  readonly foretold: Share;
  /** Rows shown and not counted. */
  readonly aside: number;
}

export interface ReportedComparison extends Share {
  readonly id: string;
  readonly title: string;
  readonly compares: string;
  readonly tolerance: { readonly rule: string; readonly reason: string };
  readonly unit: string | null;
  readonly logarithmic: boolean;
  readonly note: string | null;
  readonly foretold: Share;
  readonly worst: string | null;
  readonly sources: readonly ReportedSource[];
  readonly rows: readonly (ReportedFigure | ReportedOrder)[];
}

export interface ReportedSource {
  readonly table: string;
  readonly citation: string;
  readonly doi: string | null;
  readonly provenance: string;
  readonly confidence: string;
}

interface ReportedRow {
  readonly label: string;
  readonly inside: boolean;
  readonly fitted: boolean;
  readonly aside: string | null;
  readonly miss: string | null;
}

export interface ReportedFigure extends ReportedRow {
  readonly predicted: number;
  readonly observed: number | null;
  /** Ends of what is allowed; none where it is open. */
  readonly low: number;
  readonly high: number | null;
}

export interface ReportedOrder extends ReportedRow {
  readonly found: string;
  readonly given: string;
}

export interface ReportedCopy {
  readonly table: string;
  readonly says: string;
  readonly figures: number;
  readonly agree: number;
}

export interface ReportedCalibration {
  readonly coverage: {
    readonly seed: number;
    readonly trials: number;
    readonly usual: number;
    readonly today: number;
    readonly reps: number;
    readonly width: number;
  };
  readonly windows: {
    readonly seed: number;
    readonly trials: number;
    readonly hits: readonly {
      readonly window: string;
      readonly ours: number;
      readonly best: string;
      readonly theirs: number;
    }[];
  };
  /** One set to failure a week, for weeks: the one-rep max after the last. */
  readonly logs: {
    readonly seed: number;
    readonly lifters: number;
    readonly kinds: readonly {
      readonly log: string;
      readonly held: number;
      /** Mean of ln(likely / true). */
      readonly bias: number;
    }[];
  };
}

export interface ReportedConstant {
  readonly fatiguePerSecond: number;
  readonly secondsPerRep: number;
  readonly fromHolds: number;
  readonly fromCounts: number;
  readonly usedKappa: number;
  readonly usedAlpha: number;
}
