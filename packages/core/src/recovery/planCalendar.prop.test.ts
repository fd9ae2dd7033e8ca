import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CalendarRequest } from './Calendar.ts';
import { planCalendar } from './planCalendar.ts';
import { minutesOf } from './zonedTime.ts';

const dayHours = fc.record({
  open: fc.array(
    fc.constantFrom(
      { from: '07:00', to: '08:00' },
      { from: '12:00', to: '13:00' },
      { from: '18:00', to: '19:30' },
    ),
    { maxLength: 2 },
  ),
  kind: fc.constantFrom('off', 'night'),
});
const hours = fc.constantFrom(0, 20, 24, 36, 48, 60);
const muscles = fc.record({ lats: hours, vasti: hours }, { requiredKeys: [] });
/** Small enough to try every plan: at most 10 starts and two sessions. */
const small: fc.Arbitrary<CalendarRequest> = fc
  .record({
    zone: fc.constantFrom('Europe/Berlin', 'UTC'),
    firstDay: fc.constantFrom('2026-03-26', '2026-10-22'),
    days: fc.integer({ min: 1, max: 5 }),
    rota: fc.record({
      firstDay: fc.constant('2026-03-01'),
      days: fc.array(dayHours, { minLength: 1, maxLength: 5 }),
    }),
    sessions: fc.oneof(
      muscles.map((needs) => [{ id: 'a', name: 'A', minutes: 60, muscles: needs }]),
      fc.tuple(muscles, muscles).map(([a, b]) => [
        { id: 'a', name: 'A', minutes: 60, muscles: a },
        { id: 'b', name: 'B', minutes: 45, muscles: b },
      ]),
    ),
    order: fc.constantFrom('as-listed', 'any-in-round'),
    perWeek: fc.integer({ min: 1, max: 7 }),
    startEveryMinutes: fc.constant(30),
    keep: fc.array(
      fc.record({
        session: fc.constantFrom('a', 'b'),
        start: fc
          .tuple(
            fc.constantFrom('2026-03-26', '2026-03-28', '2026-10-23', '2026-10-25'),
            fc.constantFrom('07:00', '18:00', '18:30'),
          )
          .map(([date, time]) => `${date}T${time}`),
      }),
      { maxLength: 3 },
    ),
    rules: fc.constantFrom(
      [],
      [{ kind: 'night', noneOnTheNextDay: true }],
      [{ kind: 'night', mostInARow: 1 }],
      [{ kind: 'night', mostInARow: 2 }],
    ),
  })
  .map((request) => ({
    ...request,
    keep: request.keep.filter(({ session }) => request.sessions.some(({ id }) => id === session)),
  }));

interface Judgement {
  readonly count: number;
  readonly kept: number;
  readonly uneven: number;
  readonly late: number;
}

interface Choice {
  readonly at: number;
  readonly day: number;
  readonly session: number;
}

/** Every start by the clock itself: wall times tried one by one. */
function startsByHand(request: CalendarRequest) {
  const { rota, zone } = request;
  const dayOf = (date: string) => Date.parse(`${date}T00:00Z`) / 864e5;
  const out: { at: number; close: number; day: number; kind: string }[] = [];
  for (let i = 0; i < request.days; i += 1) {
    const day = dayOf(request.firstDay) + i;
    const date = new Date(day * 864e5).toISOString().slice(0, 10);
    const cycle = rota.days.length;
    const place = (((day - dayOf(rota.firstDay)) % cycle) + cycle) % cycle;
    for (const { from, to } of rota.days[place]?.open ?? []) {
      const close = minutesOf(`${date}T${to}`, zone);
      for (let at = minutesOf(`${date}T${from}`, zone); at + 45 <= close; at += 30) {
        out.push({ at, close, day, kind: rota.days[place]?.kind ?? '' });
      }
    }
  }
  return out;
}

/** The largest plan and its judgement, by trying every subset. */
function tryAll(request: CalendarRequest): Judgement {
  const starts = startsByHand(request).sort((a, b) => a.at - b.at);
  const kinds = new Map(starts.map(({ day, kind }) => [day, kind]));
  const [rule] = request.rules ?? [];
  const week = (day: number) => Math.floor((day + 3) / 7);
  const perWeek = request.perWeek ?? 7;
  const kindOn = (day: number): string => {
    const place = day - Date.parse(`${request.rota.firstDay}T00:00Z`) / 864e5;
    const cycle = request.rota.days.length;
    return request.rota.days[((place % cycle) + cycle) % cycle]?.kind ?? '';
  };
  const sameRun = (a: number, b: number) =>
    Array.from({ length: b - a + 1 }, (_, i) => kindOn(a + i)).every((kind) => kind === kindOn(a));
  let best: Judgement = { count: -1, kept: 0, uneven: 0, late: 0 };
  const keep = (request.keep ?? []).map(
    ({ start, session }) => `${minutesOf(start, request.zone)} ${session}`,
  );
  const judge = (plan: readonly Choice[]) => {
    let uneven = 0;
    for (const [i, { day }] of plan.slice(1).entries()) {
      const days = day - (plan[i]?.day ?? 0);
      uneven += Math.max(0, Math.floor(7 / perWeek) - days, days - Math.ceil(7 / perWeek)) ** 2;
    }
    const late = plan.reduce((sum, { at }) => sum + at - (starts[0]?.at ?? 0), 0);
    const kept = plan.filter(({ at, session }) =>
      keep.includes(`${at} ${request.sessions[session]?.id}`),
    ).length;
    const differences = [
      plan.length - best.count,
      kept - best.kept,
      best.uneven - uneven,
      best.late - late,
    ];
    const first = differences.find((difference) => difference !== 0) ?? 0;
    if (first > 0) best = { count: plan.length, kept, uneven, late };
  };
  const grow = (plan: readonly Choice[], from: number) => {
    judge(plan);
    const last = plan.at(-1);
    const round = plan.slice(plan.length - (plan.length % request.sessions.length));
    const due = request.sessions
      .map((_, session) => session)
      .filter((session) => !round.some((done) => done.session === session));
    const next = request.order === 'as-listed' ? due.slice(0, 1) : due;
    for (let i = from; i < starts.length; i += 1) {
      const start = starts[i];
      if (start === undefined || (last && start.day <= last.day)) continue;
      if (plan.filter(({ day }) => week(day) === week(start.day)).length >= perWeek) continue;
      const isNight = rule !== undefined && kinds.get(start.day) === rule.kind;
      if (isNight && rule.noneOnTheNextDay && last?.day === start.day - 1) {
        if (kindOn(last.day) === rule.kind) continue;
      }
      const inRun = plan.filter(({ day }) => sameRun(day, start.day)).length;
      if (isNight && inRun >= (rule.mostInARow ?? inRun + 1)) continue;
      for (const session of next) {
        const planned = request.sessions[session];
        if (planned === undefined || start.at + planned.minutes > start.close) continue;
        const ready = plan.every((done) =>
          Object.entries(request.sessions[done.session]?.muscles ?? {}).every(
            ([muscle, needed]) => !(muscle in planned.muscles) || start.at >= done.at + 60 * needed,
          ),
        );
        if (ready) grow([...plan, { at: start.at, day: start.day, session }], i + 1);
      }
    }
  };
  grow([], 0);
  return best;
}

describe('planCalendar', () => {
  it('finds the plan that trying every plan finds', () => {
    fc.assert(
      fc.property(small, (request) => {
        const expected = tryAll(request);
        const plan = planCalendar(request);
        const placed = plan.kind === 'planned' ? plan.sessions : [];
        expect(placed).toHaveLength(expected.count);
        const first = Math.min(...startsByHand(request).map(({ at }) => at));
        const late = placed.reduce(
          (sum, { start }) => sum + minutesOf(start, request.zone) - first,
          0,
        );
        expect(late).toBe(placed.length === 0 ? 0 : expected.late);
      }),
      { numRuns: 300 },
    );
  });

  it('never trains a muscle before it is ready, and leaves its request as it was', () => {
    fc.assert(
      fc.property(small, (request) => {
        const before = structuredClone(request);
        const plan = planCalendar(request);
        expect(request).toEqual(before);
        for (const { gaps } of plan.kind === 'planned' ? plan.sessions : []) {
          for (const gap of gaps) expect(gap.hours).toBeGreaterThanOrEqual(gap.hoursNeeded);
        }
      }),
    );
  });

  it('places as many sessions when few ways are compared', () => {
    fc.assert(
      fc.property(small, (request) => {
        const all = planCalendar(request);
        const few = planCalendar({ ...request, mostWays: 1 });
        const countOf = (plan: typeof all) => (plan.kind === 'planned' ? plan.sessions.length : 0);
        expect(countOf(few)).toBe(countOf(all));
      }),
    );
  });
});
