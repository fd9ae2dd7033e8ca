import { describe, expect, it } from 'vitest';
import { client, gym, pulldown } from './boathouse.testing.ts';
import { joinRefusals } from './joinRefusals.ts';
import type { KnownLift } from './knownLift.ts';
import { liftOf } from './liftOf.ts';

function known(exercise: string, equipment: string): KnownLift {
  const lift = liftOf({ ...pulldown, exercise, equipment }, gym, client.bodyWeight);
  if (lift.kind !== 'lift') throw new Error(lift.message);
  return { question: { lift } } as unknown as KnownLift;
}

const pull = known('cable-pulldown', 'pulldown');
const chin = known('chin-up', 'station');
const press = known('dumbbell-bench-press', 'dumbbells');
const turns = { kind: 'in-turn' } as const;
const codes = (...args: Parameters<typeof joinRefusals>) =>
  joinRefusals(...args).map(({ what, code }) => [what, code]);

describe('joinRefusals', () => {
  it('has no turns for the same prime movers, and names them', () => {
    expect(joinRefusals(pull, chin, turns, undefined)).toMatchObject([
      {
        what: 'join',
        code: 'session.in-turn-shares-muscles',
        message: expect.stringMatching(
          /^Cable pulldown and Chin-up both work [a-z ]+, [a-z ]+, so/,
        ),
      },
    ]);
    const pair = { kind: 'pair' } as const;
    const effect = { kind: 'effect' } as Parameters<typeof joinRefusals>[3];
    expect(codes(pull, chin, pair, effect)).toEqual([]);
    expect(codes(pull, press, turns, undefined)).toEqual([]);
  });

  it('hands on why a pair is none, each reason with what to do instead', () => {
    const refusals = [
      { code: 'pairing.a', why: 'It is so.', instead: 'Do this.' },
      { code: 'pairing.b', why: 'And so.', instead: 'Do that.' },
    ];
    const refused = { kind: 'refused', refusals } as unknown as Parameters<typeof joinRefusals>[3];
    expect(joinRefusals(pull, chin, { kind: 'pair' }, refused)).toEqual([
      { what: 'join', code: 'pairing.a', message: 'It is so. Do this.' },
      { what: 'join', code: 'pairing.b', message: 'And so. Do that.' },
    ]);
  });
});
