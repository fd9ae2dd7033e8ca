import { describe, expect, it } from 'vitest';
import type { ClientHealth, TrainingContext } from './ClientHealth.ts';
import { cautionsFor } from './cautionsFor.ts';

const asked: ClientHealth = {
  symptoms: [],
  conditions: [],
  activity: 'active',
  bloodPressure: { status: 'not-raised' },
};
const ids = (client: ClientHealth, context?: TrainingContext) =>
  cautionsFor(client, context).map(({ id }) => id);

describe('cautionsFor', () => {
  it('has nothing to say when everything was asked and nothing applies', () => {
    expect(cautionsFor(asked)).toEqual([]);
  });

  it('says so when questions were left out', () => {
    expect(ids({})).toEqual(['not-all-asked']);
  });

  // Riebe 2015: the three outcomes, by signs, known disease, activity and wanted intensity.
  describe('screening', () => {
    it('stops for any sign, however active the person', () => {
      const [first] = cautionsFor({ ...asked, symptoms: ['palpitations'] });
      expect(first).toMatchObject({ id: 'signs-of-disease', level: 'stop' });
    });

    it('asks a physician first for a known disease without activity', () => {
      const [first] = cautionsFor({ ...asked, conditions: ['metabolic'], activity: 'inactive' });
      expect(first).toMatchObject({ id: 'known-disease-inactive', level: 'stop' });
    });

    it('asks before vigorous effort only when the person is active', () => {
      const client = { ...asked, conditions: ['kidney'] } as const;
      expect(ids(client)).toEqual(['known-disease-active']);
      expect(ids(client, { intensity: 'moderate' })).toEqual([]);
    });

    it('asks nobody for an inactive person without disease, but starts lightly', () => {
      const [first] = cautionsFor({ ...asked, activity: 'inactive' });
      expect(first).toMatchObject({ id: 'little-activity', level: 'note', ask: [] });
    });

    it('takes the clinician’s agreement for a known disease, never for a sign', () => {
      const clinician = { by: 'physician', agreesToTraining: true } as const;
      expect(ids({ ...asked, conditions: ['kidney'], clinician })).toEqual([]);
      expect(ids({ ...asked, symptoms: ['heart-murmur'], clinician })).toEqual([
        'signs-of-disease',
      ]);
    });
  });

  it('warns of a first session of hard lowerings, not of an accustomed one', () => {
    const context = { loweringHeavy: true };
    expect(ids(asked, context)).toEqual(['first-lowering-heavy-work']);
    expect(ids({ ...asked, loweringHeavyWork: 'accustomed' }, context)).toEqual([]);
  });

  it('puts the gravest first and names each once', () => {
    const client: ClientHealth = {
      ...asked,
      ageYears: 70,
      complaints: [
        { kind: 'elbow-outer', redFlags: ['weakness'] },
        { kind: 'wrist', redFlags: ['weakness'] },
      ],
    };
    expect(ids(client)).toEqual(['new-weakness', 'elbow-outer', 'wrist', 'over-65']);
  });

  it('asks again when a clinician’s date has passed, and not on the day itself', () => {
    const clinician = { by: 'physician', until: '2026-05-31' } as const;
    expect(ids({ ...asked, clinician }, { date: '2026-05-31' })).toEqual([]);
    expect(ids({ ...asked, clinician }, { date: '2026-06-01' })).toEqual(['clinician-limit-ended']);
    expect(ids({ ...asked, clinician })).toEqual([]);
  });
});

describe('cases from practice', () => {
  it('front-of-shoulder pain at the bottom of a press: what to ask, and whom', () => {
    const cautions = cautionsFor({
      ...asked,
      complaints: [{ kind: 'shoulder-front-bottom-of-press', redFlags: [] }],
    });
    expect(cautions.map(({ id }) => id)).toEqual([
      'shoulder-front-bottom-of-press',
      'signs-beside-a-complaint',
    ]);
    expect(cautions[0]?.ask).toContain('physiotherapist');
    expect(cautions[1]?.what).toMatch(/night.*injury.*weakness.*numbness/);
  });

  it('tingling fingers beside elbow pain: the referral comes before anything else', () => {
    const cautions = cautionsFor({
      ...asked,
      complaints: [{ kind: 'elbow-back-or-inner', redFlags: ['numbness-or-tingling'] }],
    });
    expect(cautions[0]).toMatchObject({ id: 'numbness-or-tingling', level: 'stop' });
    expect(cautions[0]?.instead).toMatch(/^Pause loaded work/);
  });

  it('a sore knee and a tendon programme: stopped without a clinician, open with one', () => {
    const complaints = [{ kind: 'knee-tendon-front', redFlags: [] }] as const;
    expect(cautionsFor({ ...asked, complaints })[0]).toMatchObject({ level: 'stop' });
    const clinician = { by: 'physiotherapist', agreesToTraining: true } as const;
    expect(cautionsFor({ ...asked, complaints, clinician })[0]).toMatchObject({ level: 'caution' });
  });

  it('a child of twelve: a qualified adult and a health check, no figure of body weight', () => {
    const [caution] = cautionsFor({ ...asked, ageYears: 12 });
    expect(caution?.ask).toEqual(['qualified-adult', 'physician']);
    expect(caution?.instead).not.toMatch(/\d+ ?(%|kg)/);
    expect(caution?.why).toMatch(/contradict each other/);
    expect(caution?.why).not.toMatch(/grow/);
  });

  it('seventy: age alone is a note, and does not lighten loads', () => {
    const [caution] = cautionsFor({ ...asked, ageYears: 70 });
    expect(caution).toMatchObject({ id: 'over-65', level: 'note' });
    expect(caution?.why).toMatch(/does not call for light loads/);
  });
});
