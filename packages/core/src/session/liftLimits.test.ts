import { describe, expect, it } from 'vitest';
import { limitsFor } from '../safety/index.ts';
import { client, gym, pulldown } from './boathouse.testing.ts';
import type { LiftIntent } from './Intent.ts';
import { liftLimits } from './liftLimits.ts';
import { liftOf } from './liftOf.ts';

function limitsOf(change: Partial<LiftIntent>, health: Parameters<typeof limitsFor>[0]) {
  const lift = liftOf({ ...pulldown, ...change }, gym, client.bodyWeight);
  if (lift.kind !== 'lift') throw new Error(lift.message);
  const context = { intensity: 'vigorous', alone: true, date: '2027-03-15' } as const;
  return liftLimits(lift, limitsFor(health, context));
}

const elbow = { complaints: [{ kind: 'elbow-outer', redFlags: [] }] } as const;
const chin = { exercise: 'chin-up', equipment: 'station' };

describe('liftLimits', () => {
  it('are nothing where all is open', () => {
    expect(limitsOf({}, {})).toBeUndefined();
    expect(limitsOf({ variant: 'neutral-grip' }, elbow)).toBeUndefined();
    expect(limitsOf(chin, elbow)).toBeUndefined();
  });

  it('name the set-ups that are left open, by id and in words, the usual one among them', () => {
    // a pulldown pulls with the palms down, a chin-up only in one of its set-ups
    expect(limitsOf({}, elbow)).toMatch(
      /These set-ups are left open: .*"neutral-grip" \(palms facing each other\)/,
    );
    expect(limitsOf({}, elbow)).not.toContain('the usual one');
    expect(limitsOf({ ...chin, variant: 'palms-down' }, elbow)).toMatch(
      /These set-ups are left open: the usual one(, "|\.)/,
    );
  });

  it('say every reason, and that no set-up is left where none is', () => {
    const clinician = { by: 'physician', notAllowed: ['chin-ups', 'pulldowns'] } as const;
    const both = limitsOf({}, { ...elbow, clinician });
    expect(both).toMatch(/No set-up of Cable pulldown is left open: take another exercise\.$/);
    const [one, other] = [limitsOf({}, elbow), limitsOf({}, { clinician })].map(
      (words) => words?.split(/\. (?:These|No) set-up/)[0],
    );
    expect(both).toContain(`${other}. ${one}`);
  });
});
