import { describe, expect, it } from 'vitest';
import { printSheet } from './printSheet.ts';
import type { SessionSheet, SheetFinding, SheetLift } from './Sheet.ts';

const load = (words: string, loading: string) =>
  ({
    value: { value: 40, unit: 'kg' },
    words,
    loading,
  }) as const;
const band = (low: number, likely: number, high: number) => ({ low, likely, high, level: 0.8 });
const pull: SheetLift = {
  kind: 'planned',
  name: 'Pulldown',
  equipment: 'Tower',
  tempo: '4-0-2-0',
  count: 'lift 2 s, lower 4 s',
  window: { minReps: 8, maxReps: 11 },
  load: load('40 kg on the stack', 'pin at 40 kg'),
  warmUp: [
    { load: load('20 kg on the stack', ''), reps: 5, restSeconds: 30, change: 'pin to 20 kg' },
  ],
  warmUpNote: '',
  changeToWork: 'pin to 40 kg',
  sets: [
    { reps: band(8, 10, 12), seconds: band(48, 60, 72), chance: 0.615 },
    { reps: band(7, 9, 11), seconds: band(42, 54, 66), chance: 0.5 },
  ],
  restSeconds: 150,
  fixed: [],
  refused: [],
  notes: ['Go on.'],
};
const sheet: SessionSheet = {
  kind: 'sheet',
  client: 'Winch hand',
  gym: 'Boathouse',
  date: '2027-03-15',
  minutes: { change: 2.4, warmUp: 1.5, work: 4.4, rest: 2.5, total: 10.8 },
  lifts: [pull],
  refused: [],
  cautions: [],
  stop: ['Pain: stop.'],
};
const caution = {
  level: 'caution',
  what: 'New work.',
  why: 'It is sore.',
  instead: 'Do less.',
  ask: ['physician', 'emergency-services'],
} as const;
const lines = (change: Partial<SessionSheet> = {}) =>
  printSheet({ ...sheet, ...change }).split('\n');
const ofLift = (change: Partial<SheetLift>) => {
  const all = lines({ lifts: [{ ...pull, ...change }] });
  return all.slice(4, all.indexOf('Stop at any of these') - 2);
};

describe('printSheet', () => {
  it('stands line by line as a client follows it', () => {
    expect(lines()).toEqual([
      'Winch hand, 2027-03-15, Boathouse',
      'About 11 minutes: changes 2, warm-up 2, work 4, rests 3',
      'No rest is counted after the last set of a lift.',
      '',
      '1  Pulldown (Tower)',
      '   8–11 reps at 4-0-2-0: lift 2 s, lower 4 s',
      '   warm up  20 kg on the stack × 5: pin to 20 kg; then rest 30 s',
      '   load     40 kg on the stack',
      '            pin at 40 kg (pin to 40 kg)',
      '   set 1    about 10 reps (8–12 in 8 of 10), 62 % inside the window',
      '   set 2    about 9 reps (7–11 in 8 of 10), 50 % inside the window',
      '   rest     150 s between sets',
      '   Go on.',
      '',
      '',
      'Stop at any of these',
      '  Pain: stop.',
    ]);
  });

  it('says a window of one count as one, and no rest after a single set', () => {
    const all = ofLift({ window: { minReps: 5, maxReps: 5 }, sets: pull.sets.slice(0, 1) });
    expect(all[1]).toBe('   5 reps at 4-0-2-0: lift 2 s, lower 4 s');
    expect(all.join('\n')).not.toContain('between sets');
  });

  it('says why there is no warm-up set in place of one', () => {
    expect(ofLift({ warmUpNote: 'None is needed.' })[2]).toBe('   warm up  None is needed.');
  });

  it('tells what is fixed, what is refused and for what a lift was chosen, before the notes', () => {
    const all = ofLift({ chosenFor: ['For lats.'], fixed: ['Sets.'], refused: ['No load.'] });
    expect(all.slice(-4)).toEqual([
      '   For lats.',
      '   fixed    Sets.',
      '   refused  No load.',
      '   Go on.',
    ]);
  });

  it('tells how a last set goes on, and for whom it does not, once for all lifts', () => {
    const chain = {
      stages: [
        { words: 'hold', seconds: band(9.6, 14.4, 20.2) },
        { words: 'lower', count: band(0.6, 1.2, 2), seconds: band(3, 5, 6) },
      ],
      needs: ['a partner'],
      notes: ['It costs.'],
      notFor: ['The young.', 'The old.'],
    };
    expect(ofLift({ chain }).slice(7, 12)).toEqual([
      '   then     the last set goes on past the rep that fails, with the same load:',
      '            hold; about 14 (10–20 in 8 of 10) s',
      '            lower; about 1 (1–2 in 8 of 10), about 5 (3–6 in 8 of 10) s',
      '            Needed: a partner',
      '            It costs.',
    ]);
    const lift = { ...pull, chain };
    const text = lines({ lifts: [lift, lift] }).join(' ');
    expect(text.match(/It is not planned where: The young\. The old\./g)).toHaveLength(1);
    expect(
      lines({
        lifts: [{ kind: 'left-out', name: 'Row', reason: 'No.', exchanges: [] }, lift],
      }).join(' '),
    ).toContain('It is not planned where');
    // also where a lift without a chain comes first; a blank line, no caution, and a blank line follow
    const after = lines({ lifts: [pull, lift] });
    expect(after.join(' ')).toContain('It is not planned where: The young. The old.');
    expect(after.slice(-4)).toEqual(['', '', 'Stop at any of these', '  Pain: stop.']);
  });

  it('sets what goes over a line in below its words', () => {
    const long = Array.from({ length: 12 }, () => 'rowing').join(' ');
    const indent = (all: readonly string[], begin: string) => {
      const at = all.findIndex((line) => line.startsWith(begin));
      return (all[at + 1] ?? '').search('rowing');
    };
    const [step] = pull.warmUp;
    if (!step) throw new Error('no warm-up set');
    const warmUp = [{ ...step, change: long }];
    const lift = ofLift({ warmUp, fixed: [long], refused: [long] });
    for (const begin of ['   warm up', '   fixed', '   refused']) {
      expect(indent(lift, begin), begin).toBe(12);
    }
    const exchanges = [{ name: 'Chin-up', equipment: 'Bar', reasons: [long] }];
    const left = lines({ lifts: [{ kind: 'left-out', name: 'Row', reason: 'No.', exchanges }] });
    expect(indent(left, '   instead')).toBe(12);
    expect(indent(lines({ cautions: [{ ...caution, why: long }] }), 'CAUTION')).toBe(2);
  });

  it('has no rest between the sets of one set', () => {
    const [first] = pull.sets;
    expect(ofLift({ sets: first ? [first] : [] }).slice(-2)).toEqual([
      '   set 1    about 10 reps (8–12 in 8 of 10), 62 % inside the window',
      '   Go on.',
    ]);
  });

  it('leads from one joined lift to the other and back', () => {
    const join = { kind: 'pair', transitionSeconds: 10, notes: ['It is a guess.'] } as const;
    expect(ofLift({ join: { ...join, place: 'first', waitSeconds: 150 } }).slice(-3)).toEqual([
      '   rest     10 s, then a set of 2',
      '            It is a guess.',
      '   Go on.',
    ]);
    const second = (waitSeconds?: number) => {
      const place = { ...join, place: 'second', ...(waitSeconds && { waitSeconds }) } as const;
      return lines({ lifts: [pull, { ...pull, join: place }] }).filter((line) =>
        line.includes('round'),
      );
    };
    expect(second(150)).toEqual(['   rest     150 s, then the next round with 1']);
    expect(second()).toEqual(['   rest     one round with 1']);
  });

  it('leads to a load of which nothing is known', () => {
    const finding: SheetFinding = {
      kind: 'finding',
      name: 'Row',
      equipment: 'Dumbbells',
      tempo: '4-0-2-0',
      count: 'lift 2 s, lower 4 s',
      window: { minReps: 8, maxReps: 11 },
      firstLoad: load('8 kg in one hand', 'one of 8 kg'),
      reps: 8,
      fixed: [],
      refused: ['No chain.'],
      notes: ['Step up.'],
    };
    expect(lines({ lifts: [finding] }).slice(4, 9)).toEqual([
      '1  Row (Dumbbells)',
      '   8–11 reps at 4-0-2-0: lift 2 s, lower 4 s',
      '   Start with 8 kg in one hand: one of 8 kg',
      '   refused  No chain.',
      '   Step up.',
    ]);
  });

  it('says what is left out and what is done instead', () => {
    const exchanges = [{ name: 'Chin-up', equipment: 'Bar', reasons: ['Same.', 'Harder.'] }];
    const [head, reason, instead] = lines({
      lifts: [{ kind: 'left-out', name: 'Row', reason: 'No bar.', exchanges }],
    }).slice(4);
    expect([head, reason, instead]).toEqual([
      '1  Row: left out',
      '   No bar.',
      '   instead  Chin-up (Bar). Same. Harder.',
    ]);
  });

  it('says what a limit took, what turns would save, and what was not followed', () => {
    const limit = {
      minutesAtMost: 9,
      withoutMinutes: 10.2,
      dropped: [{ message: 'Set 2 of Pulldown.', minutesSaved: 3.44 }],
      turns: 'By turns.',
    };
    expect(lines({ limit, refused: ['Shins.'] }).slice(2, 8)).toEqual([
      'No rest is counted after the last set of a lift.',
      'To fit into 9 minutes instead of 11, the least useful is left out:',
      '  Set 2 of Pulldown. Saves 3.4 min.',
      'By turns.',
      'Not followed: Shins.',
      '',
    ]);
    const { turns: _, ...without } = limit;
    expect(lines({ limit: without }).slice(4, 6)).toEqual([
      '  Set 2 of Pulldown. Saves 3.4 min.',
      '',
    ]);
    expect(lines({ limit: { ...without, dropped: [] } })[3]).toBe(
      'It fits into the 9 minutes as it is.',
    );
  });

  it('says when these muscles can work again', () => {
    const time = (date: string, hours: number) => ({ date, hours });
    const next = {
      date: '2027-03-17',
      isFixed: false,
      earliest: time('2027-03-16', 20.2),
      likely: time('2027-03-17', 44),
      cautious: time('2027-03-18', 70.5),
      notes: ['Early.'],
    };
    const all = lines({ next });
    const at = all.indexOf('Next for these muscles: 2027-03-17');
    expect(all.slice(at, at + 5)).toEqual([
      'Next for these muscles: 2027-03-17',
      '  Ready by, at the same time of day: earliest 2027-03-16 (21 h), likely',
      '  2027-03-17 (44 h), cautious 2027-03-18 (71 h)',
      '  Early.',
      '',
    ]);
    expect(lines({ next: { ...next, isFixed: true } })).toContain(
      'Next for these muscles: 2027-03-17 (fixed)',
    );
  });

  it('gives every caution with what to do and whom to ask', () => {
    const all = lines({ cautions: [caution, { ...caution, level: 'note', ask: [] }] });
    const at = all.indexOf('CAUTION  New work. It is sore.');
    expect(all.slice(at)).toEqual([
      'CAUTION  New work. It is sore.',
      '  Do less.',
      '  Ask: physician, emergency services.',
      'NOTE  New work. It is sore.',
      '  Do less.',
      '',
      'Stop at any of these',
      '  Pain: stop.',
    ]);
  });

  it('only asks, or only says that the time is short', () => {
    const head = { client: 'Winch hand', date: '2027-03-15', cautions: [caution] };
    const asked = printSheet({
      kind: 'ask-first',
      ...head,
      reasons: ['A sign.'],
      ask: ['physician', 'emergency-services'],
    });
    const cautions = [
      'CAUTION  New work. It is sore.',
      '  Do less.',
      '  Ask: physician, emergency services.',
    ];
    expect(asked.split('\n')).toEqual([
      'Winch hand, 2027-03-15: ask first',
      '',
      '  A sign.',
      '  Ask: physician, emergency services.',
      '',
      ...cautions,
    ]);
    expect(
      printSheet({ kind: 'too-short', ...head, message: 'Nothing fits.' }).split('\n'),
    ).toEqual(['Winch hand, 2027-03-15: too little time', '', '  Nothing fits.', '', ...cautions]);
  });
});
