import { describe, expect, it } from 'vitest';
import { checkTempo } from './checkTempo.ts';
import type { Tempo } from './Tempo.ts';

const plain: Tempo = {
  lowerSeconds: 3,
  pauseAfterLowerSeconds: 0,
  liftSeconds: 1,
  pauseAfterLiftSeconds: 0,
};

describe('checkTempo', () => {
  it('gives a sound tempo back', () => {
    expect(checkTempo(plain)).toEqual({ ok: true, value: plain });
    expect(checkTempo({ ...plain, lowerSeconds: 0, liftSeconds: 'X' }).ok).toBe(true);
    expect(checkTempo({ ...plain, liftSeconds: 0 }).ok).toBe(true);
  });

  it.each<[Partial<Tempo>, string, string]>([
    [{ lowerSeconds: -1 }, 'tempo.not-seconds', 'lowerSeconds'],
    [{ liftSeconds: Number.NaN }, 'tempo.not-seconds', 'liftSeconds'],
    [{ pauseAfterLiftSeconds: 61 }, 'tempo.phase-too-long', 'pauseAfterLiftSeconds'],
    [{ lowerSeconds: Number.POSITIVE_INFINITY }, 'tempo.phase-too-long', 'lowerSeconds'],
    [{ pauseAfterLowerSeconds: 1 / 3 }, 'tempo.too-fine', 'pauseAfterLowerSeconds'],
  ])('refuses %j and says where', (change, code, field) => {
    expect(checkTempo({ ...plain, ...change })).toMatchObject({
      ok: false,
      problems: [{ code, path: [field] }],
    });
  });

  it('refuses less movement than a repetition can have', () => {
    const tooShort = checkTempo({ ...plain, lowerSeconds: 0.1, liftSeconds: 0.05 });
    expect(tooShort).toMatchObject({
      ok: false,
      problems: [{ code: 'tempo.no-movement', path: [] }],
    });
  });
});
