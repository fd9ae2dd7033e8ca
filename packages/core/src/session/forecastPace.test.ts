import { expect, it } from 'vitest';
import { client, gym, intentOf, pulldown } from './boathouse.testing.ts';
import { forecastPace } from './forecastPace.ts';
import { planSession } from './planSession.ts';

it.each([
  [0.2, 1],
  [1, 1],
  [6, 6],
  [60, 60],
  [80, 60],
])('takes %d s a repetition as %d s', (seconds, pace) => {
  expect(forecastPace(seconds)).toBe(pace);
});

it('lets a set go past failure at every tempo', () => {
  const stages = [{ kind: 'hold', at: 'middle', maxSeconds: 20 }] as const;
  for (const [liftSeconds, minReps, maxReps] of [
    [60, 1, 4],
    [0.2, 20, 60],
  ] as const) {
    const tempo = { ...pulldown.tempo, lowerSeconds: liftSeconds, liftSeconds };
    const lift = { ...pulldown, tempo, window: { minReps, maxReps }, chain: { stages } };
    const plan = planSession({ client, gym, intent: intentOf(lift) });
    const [first] = plan.kind === 'session' ? plan.lifts : [];
    expect(first?.kind === 'planned' && first.chain?.stages).toHaveLength(2);
  }
});
