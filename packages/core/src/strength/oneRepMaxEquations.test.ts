import { describe, expect, it } from 'vitest';
import { oneRepMaxEquations } from './oneRepMaxEquations.ts';

describe('oneRepMaxEquations', () => {
  it('names each once', () => {
    const ids = oneRepMaxEquations.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('says of each where it holds, and cites it', () => {
    for (const { id, validReps, validShares, source, knownError } of oneRepMaxEquations) {
      expect(validReps ?? validShares, id).toBeDefined();
      expect(source.citation, id).not.toBe('');
      expect(knownError, id).not.toBe('');
    }
  });

  it('computes what each formula says, worked by hand for 100 kg and 8 repetitions', () => {
    const byHand: Readonly<Record<string, number>> = {
      epley: 126.64, // 100 * 1.2664
      brzycki: 124.162, // 100 / 0.8054
      lombardi: 123.114, // 100 * 8^0.1
      oconner: 120, // 100 * 1.2
      adams: 119.048, // 100 / 0.84
      brown: 124.73, // 100 * 1.2473
      lander: 125.1092, // 10000 / 79.93016
      mayhew: 126.2863, // exp(-0.44) = 0.644036: 10000 / (52.2 + 26.98512)
      wathen: 127.6714, // exp(-0.6) = 0.548812: 10000 / (48.8 + 29.52607)
      welday: 126.64, // 100 * 1.2664
      kemmler: 116.29, // 100 * (0.988 + 0.0832 + 0.1216 - 0.0299)
      'reynolds-chest-curve': 125.6286, // exp(-0.5784) = 0.560795: 10000 / (48.47 + 31.12971)
      'reynolds-leg-curve': 131.5878, // exp(-0.4552) = 0.634321: 10000 / (26.41 + 49.58486)
      'reynolds-chest-5rm': 113.7699, // 113.07 + 0.6999
      'reynolds-leg-5rm': 123.9546, // 109.7 + 14.2546
      'braith-untrained': 150.219, // 155.4 - 5.181
      'braith-trained': 124.904, // 117.2 + 7.704
      'powerlifters-squat': 149.884, // 159.9 + 82.4 - 92.416
      'powerlifters-bench': 116.212, // 90.66 + 68 - 42.448
      'powerlifters-deadlift': 137.632, // 156.08 + 78.4 - 96.848
    };
    for (const [id, expected] of Object.entries(byHand)) {
      const equation = oneRepMaxEquations.find((one) => one.id === id);
      expect(equation?.oneRepMaxKg(100, 8), id).toBeCloseTo(expected, 3);
    }
  });
});
