import type { PieceStock, PlateStock } from '@windlass/core/equipment';
import type { LoadValue } from '@windlass/core/load';

const kg = (value: number): LoadValue => ({ value, unit: 'kg' });
const lb = (value: number): LoadValue => ({ value, unit: 'lb' });

/**
 * The gym that every calculator starts with: the boathouse of a sea-rescue crew, whose plates came
 * from two countries. Anyone's own gym takes its place in the form.
 */
export const boathouse = {
  plates: [
    { weight: kg(20), pieces: 4 },
    { weight: lb(45), pieces: 2 },
    { weight: kg(10), pieces: 4 },
    { weight: lb(10), pieces: 2 },
    { weight: kg(5), pieces: 2 },
    { weight: kg(2.5), pieces: 4 },
    { weight: kg(1.25), pieces: 2 },
  ],
  /** Small discs for a pair of handles. */
  handlePlates: [
    { weight: kg(5), pieces: 4 },
    { weight: kg(2.5), pieces: 4 },
    { weight: kg(1.25), pieces: 8 },
  ],
  /** Pairs to 32 kg, one of them missing. */
  dumbbells: [4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 28, 30, 32].map((value) => ({
    weight: kg(value),
    pieces: 2,
  })),
  stack: { first: kg(5), step: kg(5), plates: 20, pulleyRatio: 2, addOn: kg(2.5) },
} as const satisfies {
  plates: readonly PlateStock[];
  handlePlates: readonly PlateStock[];
  dumbbells: readonly PieceStock[];
  stack: {
    first: LoadValue;
    step: LoadValue;
    plates: number;
    pulleyRatio: number;
    addOn: LoadValue;
  };
};
