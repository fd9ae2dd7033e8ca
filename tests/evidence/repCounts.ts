import { readReference } from './readReference.ts';

/** Mean repetitions to failure of one published group at one share of the one-rep max. */
export interface RepCount {
  readonly share: number;
  readonly reps: number;
  /** Standard deviation between the people of the group, where it was published. */
  readonly sd: number | undefined;
}

/** One published group on one lift. */
export interface RepGroup {
  readonly dataSet: string;
  readonly group: string;
  readonly standing: 'verified' | 'recalled';
  readonly counts: readonly RepCount[];
}

/** Every published group with repetitions at shares of the one-rep max, at a pace of its own choice. */
export function repGroups(): readonly RepGroup[] {
  return [
    ...grouped('nuzzo-2024-general-table-rounded', () => 'all lifts but two', 0, 1, undefined),
    ...grouped('wolfe-2024-women-powerlifts', (row) => String(row[0]), 2, 3, 4),
    ...grouped('richens-cleather-2014', (row) => `leg press, ${row[0]}`, 2, 3, 4),
    ...grouped('cooke-2019-squat-70', (row) => String(row[0]), 2, 3, 4),
    ...grouped('shimano-2006-verified-cell', (row) => String(row[0]), 3, 4, 5),
    ...pereira(),
    ...hoeger(),
  ];
}

function grouped(
  dataSet: string,
  nameOf: (row: Row) => string,
  share: number,
  reps: number,
  sd: number | undefined,
): readonly RepGroup[] {
  const { rows, provenance: standing } = readReference(dataSet);
  return [...new Set(rows.map(nameOf))].map((group) => ({
    dataSet,
    group,
    standing,
    counts: rows
      .filter((row) => nameOf(row) === group)
      .map((row) => ({
        share: Number(row[share]) / 100,
        reps: Number(row[reps]),
        sd: sd === undefined ? undefined : Number(row[sd]),
      })),
  }));
}

/** The quicker of two paces, about 2.5 seconds a repetition. */
function pereira(): readonly RepGroup[] {
  const dataSet = 'pereira-2007-knee-extension-speed';
  const counts = readReference(dataSet)
    .rows.filter(([, speed]) => speed === 80)
    .map(([percent, , mean, sd]) => ({
      share: Number(percent) / 100,
      reps: Number(mean),
      sd: Number(sd),
    }));
  return [{ dataSet, group: 'knee extension, 80 degrees a second', standing: 'verified', counts }];
}

function hoeger(): readonly RepGroup[] {
  const dataSet = 'hoeger-1987-1990-reps-by-lift';
  return readReference(dataSet).rows.map(([sex, training, lift, ...reps]) => ({
    dataSet,
    group: `${lift}, ${training} ${sex}s`,
    standing: 'recalled',
    counts: [0.4, 0.6, 0.8].flatMap((share, index) => {
      const count = reps[index];
      return typeof count === 'number' ? [{ share, reps: count, sd: undefined }] : [];
    }),
  }));
}

type Row = readonly (string | number | null)[];
