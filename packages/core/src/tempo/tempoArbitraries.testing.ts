import fc from 'fast-check';
import { checkTempo } from './checkTempo.ts';
import type { RepStart, Tempo } from './Tempo.ts';

const milliseconds = fc.oneof(
  fc.integer({ min: 0, max: 9 }).map((seconds) => seconds * 1000),
  fc.integer({ min: 0, max: 30_000 }),
);
const seconds = milliseconds.map((whole) => whole / 1000);

/** Tempos of whole and broken seconds, fast lifts among them. */
export const tempos: fc.Arbitrary<Tempo> = fc
  .record({
    lowerSeconds: seconds,
    pauseAfterLowerSeconds: seconds,
    liftSeconds: fc.oneof(seconds, fc.constant('X' as const)),
    pauseAfterLiftSeconds: seconds,
  })
  .filter((tempo) => checkTempo(tempo).ok);

export const starts: fc.Arbitrary<RepStart> = fc.constantFrom('lower', 'lift');
