import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import { clinicianTerms } from './clinicianTerms.ts';
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

  it('takes a bent-over row as the unsupported ones, a row as all', () => {
    expect(out('bent-over row')).toContain('barbell-bent-over-row');
    expect(out('bent-over row')).not.toContain('machine-row');
    expect(out('row')).toContain('machine-row');
  });

  it('takes one entry as it stands, and two that load the same as being about that', () => {
    expect(readClinicianList(['squat'], exercises).positions).toEqual([]);
    expect(out('squat')).not.toContain('barbell-deadlift');
    const two = readClinicianList(['squat', 'shrug'], exercises);
    expect(two.positions).toContain('spine-upright-load');
    expect(out('squat', 'shrug')).toContain('farmer-carry');
  });

  it('counts an entry said twice once', () => {
    expect(readClinicianList(['squat', 'squats'], exercises).positions).toEqual([]);
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
