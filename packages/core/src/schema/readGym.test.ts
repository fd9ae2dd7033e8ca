import { describe, expect, it } from 'vitest';
import { readGym } from './readGym.ts';

const bar = { kind: 'barbell', id: 'short-bar', name: 'Short bar', bar: '15 kg' };

function problemsOf(input: unknown): readonly string[] {
  const gym = readGym(input);
  return gym.ok ? [] : gym.problems.map(({ path, code }) => `${path.join('.')} ${code}`);
}

describe('readGym', () => {
  it('reads loads as text and as value with unit, and keeps the unit', () => {
    const gym = readGym({
      name: 'Boathouse',
      plates: [
        { weight: '45 lb', pieces: 2 },
        { weight: { value: 1.25, unit: 'kg' }, pieces: 4 },
        { weight: '2,5kg', pieces: 4 },
      ],
      equipment: [bar],
    });
    expect(gym).toMatchObject({
      ok: true,
      value: {
        plates: [
          { weight: { value: 45, unit: 'lb' } },
          { weight: { value: 1.25, unit: 'kg' } },
          { weight: { value: 2.5, unit: 'kg' } },
        ],
      },
    });
  });

  it('names the field for everything that is wrong, all at once', () => {
    const plates = [
      { weight: '20', pieces: 2 },
      { weight: '-5 kg', pieces: 2 },
      { weight: '10 kg', pieces: 1.5 },
      { weight: { value: Number.NaN, unit: 'kg' }, pieces: 2 },
      { weight: { value: 1e9, unit: 'kg' }, pieces: 2 },
      { weight: '10 stone', pieces: 2 },
    ];
    expect(problemsOf({ name: '', plates, equipment: [{ ...bar, bar: null }] })).toEqual([
      'name schema.too-small',
      'plates.0.weight load.no-unit',
      'plates.1.weight load.negative',
      'plates.2.pieces schema.invalid-type',
      'plates.3.weight schema.invalid-union',
      'plates.4.weight load.not-exact',
      'plates.5.weight load.unknown-unit',
      'equipment.0.bar schema.invalid-union',
    ]);
  });

  it('takes no field that it does not know', () => {
    const gym = readGym({ name: 'Boathouse', plates: [], equipment: [{ ...bar, colour: 'grey' }] });
    expect(gym).toMatchObject({ ok: false, problems: [{ path: ['equipment', 0, 'colour'] }] });
  });

  it('says which kinds of equipment there are', () => {
    const gym = readGym({ name: 'Boathouse', plates: [], equipment: [{ ...bar, kind: 'sledge' }] });
    expect(!gym.ok && gym.problems[0]?.message).toContain('barbell, one-post, fixed');
  });

  it.each([undefined, null, 5, 'gym', [], Number.NaN, () => 1])('refuses %s as a gym', (input) => {
    expect(readGym(input).ok).toBe(false);
  });
});
