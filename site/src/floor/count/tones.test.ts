import { describe, expect, it } from 'vitest';
import { toneSamples } from './tones.ts';
import { writeWav } from './writeWav.ts';

const names = [
  'lead-in',
  'lift',
  'lower',
  'pause',
  'second',
  'window',
  'end',
  'rest-near',
  'rest-over',
] as const;

describe('toneSamples', () => {
  it.each(names)('%s stays in range, and is heard within 5 ms of its beginning', (name) => {
    const samples = toneSamples(name, 16_000);
    expect(Math.max(...samples.map(Math.abs))).toBeLessThanOrEqual(1);
    expect(samples.findIndex((sample) => Math.abs(sample) > 0.05)).toBeLessThan(80);
    expect(Math.abs(samples.at(-1) ?? 1)).toBeLessThan(0.01);
  });
});

describe('writeWav', () => {
  it('writes the header of the format and the samples behind it', () => {
    const file = writeWav(new Float32Array([0, 1, -1, 0.5]), 16_000);
    const view = new DataView(file.buffer);
    const text = (from: number, to: number) => new TextDecoder().decode(file.slice(from, to));
    expect([text(0, 4), text(8, 16), text(36, 40)]).toEqual(['RIFF', 'WAVEfmt ', 'data']);
    expect(view.getUint32(4, true)).toBe(file.length - 8);
    expect([view.getUint16(20, true), view.getUint16(22, true), view.getUint16(34, true)]).toEqual([
      1, 1, 16,
    ]);
    expect([view.getUint32(24, true), view.getUint32(28, true)]).toEqual([16_000, 32_000]);
    expect(view.getUint32(40, true)).toBe(8);
    // 32 767 is the largest number of 16 bits with a sign; half of it is 16 383.5.
    expect([0, 1, 2, 3].map((at) => view.getInt16(44 + at * 2, true))).toEqual([
      0, 32_767, -32_767, 16_384,
    ]);
  });
});
