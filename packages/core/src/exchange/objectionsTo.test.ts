import { describe, expect, it } from 'vitest';
import { type Exercise, exercises } from '../anatomy/index.ts';
import { type ClientHealth, limitsFor } from '../safety/index.ts';
import { objectionsTo } from './objectionsTo.ts';

const named = (id: string): Exercise => {
  const exercise = exercises.find((candidate) => candidate.id === id);
  if (!exercise) throw new Error(`no exercise ${id}`);
  return exercise;
};
const codes = (id: string, client: ClientHealth) =>
  objectionsTo(named(id), limitsFor(client)).map(({ code }) => code);

describe('objectionsTo', () => {
  it('has none without limits', () => {
    for (const exercise of exercises) expect(objectionsTo(exercise, limitsFor({}))).toEqual([]);
  });

  it.each<[string, string, ClientHealth]>([
    [
      'on-clinicians-list',
      'good-morning',
      { clinician: { by: 'physician', notAllowed: ['deadlifts'] } },
    ],
    [
      'like-clinicians-list',
      'farmer-carry',
      { clinician: { by: 'physician', notAllowed: ['squats', 'shrugs'] } },
    ],
    ['list-not-read', 'dip', { clinician: { by: 'physician', notAllowed: ['wall ball toss'] } }],
    ['position-to-avoid', 'dip', { complaints: [{ kind: 'shoulder-slips-or-unstable' }] }],
    [
      'joint-paused',
      'dumbbell-curl',
      { complaints: [{ kind: 'elbow-outer', redFlags: ['weakness'] }] },
    ],
    ['support-not-used', 'crunch', { pregnancy: 'pregnant' }],
    [
      'hand-out-of-use',
      'barbell-curl',
      { clinician: { by: 'physician', handsOutOfUse: ['left'] } },
    ],
  ])('%s keeps out %s', (code, id, client) => {
    expect(codes(id, client)).toEqual([code]);
  });

  it('pauses no other joint and leaves out no other support', () => {
    const complaints = [{ kind: 'elbow-outer', redFlags: ['weakness'] }] as const;
    expect(codes('leg-extension', { complaints })).toEqual([]);
    expect(codes('machine-crunch', { pregnancy: 'pregnant' })).toEqual([]);
  });

  it('says how many hands it needs, and quotes what the limit is for', () => {
    const words = (id: string, client: ClientHealth) =>
      objectionsTo(named(id), limitsFor(client))[0]?.words;
    const clinician = { by: 'physician', handsOutOfUse: ['left', 'right'] } as const;
    expect(words('barbell-curl', { clinician })).toContain('both hands');
    expect(words('concentration-curl', { clinician })).toContain('a hand');
    expect(codes('leg-extension', { clinician })).toEqual([]);
    expect(words('dip', { complaints: [{ kind: 'shoulder-slips-or-unstable' }] })).toMatch(
      /the upper arm behind the trunk under load.*feels loose or slips/,
    );
  });

  it('leaves what only asks for ease', () => {
    expect(codes('romanian-deadlift', { complaints: [{ kind: 'low-back' }] })).toEqual([]);
  });
});
