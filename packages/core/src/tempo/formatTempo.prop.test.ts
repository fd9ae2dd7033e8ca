import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatTempo } from './formatTempo.ts';
import { parseTempo } from './parseTempo.ts';
import { tempos } from './tempoArbitraries.testing.ts';

describe('formatTempo and parseTempo', () => {
  it('round-trip in both orders and every notation', () => {
    fc.assert(
      fc.property(
        tempos,
        fc.constantFrom('lower-first', 'lift-first'),
        fc.constantFrom('-', '/', ':', ' ', 'none'),
        (tempo, order, separator) => {
          const text = formatTempo(tempo, { order, separator });
          const parsed = parseTempo(text, { order });
          expect(parsed.ok && parsed.value.tempo).toEqual(tempo);
          const decimalComma = parseTempo(text.replaceAll('.', ','), { order });
          expect(decimalComma).toEqual(parsed);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('read any text without throwing, and what is read writes and reads back', () => {
    const texts = fc.oneof(
      fc.string(),
      fc.stringMatching(/^[0-9xX×]{0,6}$/),
      fc.stringMatching(/^[0-9xX.,]{1,3}([-/: .,][0-9xX.,]{0,4}){0,4}$/),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const parsed = parseTempo(text);
        if (parsed.ok) {
          const again = parseTempo(formatTempo(parsed.value.tempo));
          expect(again.ok && again.value.tempo).toEqual(parsed.value.tempo);
        } else {
          expect(parsed.problems.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
