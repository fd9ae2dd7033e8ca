import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import { clinicianTerms } from './clinicianTerms.ts';
import { exerciseWith } from './exercises.testing.ts';
import { readClinicianList } from './readClinicianList.ts';

const out = (...list: readonly string[]) => {
  const filter = readClinicianList(list, exercises);
  return exercises.filter((exercise) => filter.reasonAgainst(exercise)).map(({ id }) => id);
};

describe('readClinicianList', () => {
  it('filters nothing without a list', () => {
    expect(out()).toEqual([]);
  });

  it('reads singular and plural, capitals and spaces', () => {
    const squats = out('squat');
    expect(squats).toContain('barbell-back-squat');
    expect(squats).toContain('walking-lunge');
    for (const words of ['squats', ' Squat ', 'SQUATS']) expect(out(words)).toEqual(squats);
    expect(out('Bench  presses')).toEqual(out('bench press'));
    expect(out('flies')).toEqual(out('fly'));
  });

  it('reads the name or id of any exercise', () => {
    expect(out('Face pull')).toEqual(['face-pull']);
    expect(out('chest-supported-shrug')).toEqual(['chest-supported-shrug']);
  });

  it('reads either of them, with or without hyphens', () => {
    const own = [
      exerciseWith('oar-pull', { name: 'Seated oar work', movement: 'carry' }),
      exerciseWith('b', { name: 'Hull-side lean', movement: 'carry' }),
    ];
    const like = (words: string) => {
      const filter = readClinicianList([words], own);
      return own.filter((exercise) => filter.reasonAgainst(exercise)).map(({ id }) => id);
    };
    expect(like('oar pull')).toEqual(['oar-pull']);
    expect(like('Oar-pulls')).toEqual(['oar-pull']);
    expect(like('seated oar work')).toEqual(['oar-pull']);
    expect(like('hull side leans')).toEqual(['b']);
    expect(like('oarpull')).toEqual([]);
  });

  it('takes a bent-over row as the unsupported ones, a row as all', () => {
    expect(out('bent-over row')).toContain('barbell-bent-over-row');
    expect(out('bent-over row')).not.toContain('machine-row');
    expect(out('row')).toContain('machine-row');
  });

  it('takes one entry as it stands, and two that load the same as being about that', () => {
    expect(readClinicianList(['squat'], exercises).positions).toEqual([]);
    expect(out('squat')).not.toContain('barbell-deadlift');
    const two = readClinicianList(['squat', 'shrug'], exercises);
    expect(two.positions.toSorted()).toEqual([
      'spine-loaded-bend',
      'spine-loaded-twist',
      'spine-seated-load',
      'spine-unsupported-hinge',
      'spine-upright-load',
    ]);
    // both draw the upper arm behind the trunk, and neither loads the spine
    expect(readClinicianList(['bench press', 'dip'], exercises).positions).toEqual([
      'shoulder-behind-trunk',
    ]);
    expect(out('squat', 'shrug')).toContain('farmer-carry');
  });

  it('counts an entry said twice once', () => {
    expect(readClinicianList(['squat', 'squats'], exercises).positions).toEqual([]);
  });

  it('names the movement of each entry that has one', () => {
    expect(readClinicianList(['power clean', 'lunge', 'dip'], exercises).named).toEqual([
      'split-squat',
      'dip',
    ]);
  });

  it('says where the list and the description of an exercise disagree', () => {
    const code = (id: string, ...list: readonly string[]) => {
      const exercise = exercises.find((candidate) => candidate.id === id);
      return exercise && readClinicianList(list, exercises).reasonAgainst(exercise)?.code;
    };
    // squat and shrug are about load along the spine: a bar on the back is, a belt is not
    expect(code('barbell-back-squat', 'squat', 'shrug')).toBe('on-clinicians-list');
    expect(code('belt-squat', 'squat', 'shrug')).toBe('on-clinicians-list-conflict');
    expect(code('belt-squat', 'squat')).toBe('on-clinicians-list');
    expect(code('farmer-carry', 'squat', 'shrug')).toBe('like-clinicians-list');
  });

  it('hands back what it cannot read', () => {
    expect(readClinicianList(['shrug', 'burpee', ''], exercises).unread).toEqual(['burpee', '']);
  });

  it('has for every term exercises that it covers, and no way of saying twice', () => {
    const says = clinicianTerms.flatMap((term) => term.says);
    expect(says).toEqual([...new Set(says)]);
    for (const word of says) expect(out(word).length, word).toBeGreaterThan(0);
  });
});
