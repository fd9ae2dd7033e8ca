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
      const cautions = cautionsFor({ ...asked, conditions: ['metabolic'], activity: 'inactive' });
      expect(cautions).toMatchObject([{ id: 'known-disease-inactive', level: 'stop' }]);
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

  it.each(['symptoms', 'conditions', 'activity', 'bloodPressure'] as const)(
    'says so when %s alone was left out',
    (left) => {
      const { [left]: _, ...rest } = asked;
      expect(ids(rest)).toEqual(['not-all-asked']);
    },
  );

  it.each<[readonly string[], ClientHealth]>([
    [['blood-pressure-untreated'], { bloodPressure: { status: 'untreated' } }],
    [['blood-pressure-unknown'], { bloodPressure: { status: 'unknown' } }],
    [
      ['blood-pressure-treated', 'blood-pressure-doctor-not-asked'],
      { bloodPressure: { status: 'treated' } },
    ],
    [['blood-pressure-treated'], { bloodPressure: { status: 'treated', doctorAgrees: true } }],
    [
      ['blood-pressure-treated'],
      {
        bloodPressure: { status: 'treated' },
        clinician: { by: 'physician', agreesToTraining: true },
      },
    ],
    [
      ['pressure-medicine-dizziness'],
      { bloodPressure: { status: 'not-raised', medicines: ['other'] } },
    ],
    [
      ['beta-blocker', 'pressure-medicine-dizziness'],
      { bloodPressure: { status: 'not-raised', medicines: ['beta-blocker'] } },
    ],
    [[], { bloodPressure: { status: 'not-raised', medicines: [] } }],
    [['pregnant'], { pregnancy: 'pregnant' }],
    [['recent-birth'], { pregnancy: 'birth-within-12-weeks' }],
    [['under-18'], { ageYears: 17 }],
    [[], { ageYears: 18 }],
    [[], { ageYears: 65 }],
    [['over-65'], { ageYears: 66 }],
  ])('%j: for exactly that answer', (expected, answer) => {
    expect(ids({ ...asked, ...answer })).toEqual(expected);
  });

  // The published relative contraindication: 160/100 waits for a physician's word.
  it('takes either physician’s word at a high reading, neither at a very high one', () => {
    const at = (systolic: number, doctorAgrees?: boolean, agreesToTraining?: boolean) =>
      ids({
        ...asked,
        bloodPressure: {
          status: 'not-raised',
          reading: { systolic, diastolic: 80 },
          ...(doctorAgrees !== undefined && { doctorAgrees }),
        },
        ...(agreesToTraining !== undefined && { clinician: { by: 'physician', agreesToTraining } }),
      });
    expect(at(165)).toEqual(['blood-pressure-reading-high']);
    expect(at(165, false, false)).toEqual(['blood-pressure-reading-high']);
    expect(at(165, true)).toEqual([]);
    expect(at(165, undefined, true)).toEqual([]);
    expect(at(180, true, true)).toEqual(['blood-pressure-reading-very-high']);
  });

  it('eases the sign of a joint when a clinician has agreed, never one that stops all training', () => {
    const clinician = { by: 'physician', agreesToTraining: true } as const;
    const told = (redFlag: 'weakness' | 'fever-or-unwell', own?: typeof clinician) =>
      cautionsFor({
        ...asked,
        complaints: [{ kind: 'wrist', redFlags: [redFlag] }],
        ...(own && { clinician: own }),
      }).map(({ id, level }) => [id, level]);
    expect(told('weakness')[0]).toEqual(['new-weakness', 'stop']);
    expect(told('weakness', clinician)[0]).toEqual(['new-weakness', 'caution']);
    expect(told('fever-or-unwell', clinician)[0]?.[1]).toBe('stop');
  });

  it('asks for signs as long as one complaint was told without that question', () => {
    const one = { kind: 'elbow-outer', redFlags: ['weakness'] } as const;
    const ask = 'signs-beside-a-complaint';
    expect(ids({ ...asked, complaints: [one] })).not.toContain(ask);
    expect(ids({ ...asked, complaints: [one, { kind: 'wrist' }] })).toContain(ask);
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
    const undated = { by: 'physician' } as const;
    expect(ids({ ...asked, clinician: undated }, { date: '2026-06-01' })).toEqual([]);
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
