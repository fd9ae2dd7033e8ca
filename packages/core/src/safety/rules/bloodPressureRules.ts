import type { CautionRule, LimitChange } from '../CautionRule.ts';
import type { BloodPressure, ClientHealth } from '../ClientHealth.ts';
import {
  macDougall1985,
  narloch1995,
  nery2010,
  paluch2024,
  projectConvention,
  williams2007,
} from '../sources.ts';

/** mmHg from which published advice sees a relative, then an absolute contraindication. */
const ASK_FIRST = { systolic: 160, diastolic: 100 };
const NOT_NOW = { systolic: 180, diastolic: 110 };

const above = (
  pressure: BloodPressure | undefined,
  limit: { readonly systolic: number; readonly diastolic: number },
) =>
  pressure?.reading !== undefined &&
  (pressure.reading.systolic >= limit.systolic || pressure.reading.diastolic >= limit.diastolic);

const agreed = ({ bloodPressure, clinician }: ClientHealth) =>
  bloodPressure?.doctorAgrees === true || clinician?.agreesToTraining === true;

const pressureLimits: LimitChange = {
  maximalSingles: 'refused',
  failureChains: 'refused',
  longHolds: 'refused',
  forcedReps: 'refused',
  intensityCap: 0.8,
  repWindow: { low: 10, high: 15 },
  repsInReserve: { atLeast: 2, firm: true },
};

/** Blood pressure: what was measured under the bar, and what follows for a plan. */
export const bloodPressureRules: readonly CautionRule[] = [
  {
    caution: {
      id: 'blood-pressure-reading-very-high',
      level: 'stop',
      what: 'The last reading at rest was at least 180 mmHg systolic or 110 diastolic.',
      why: 'Published advice counts this as a reason not to lift; lifting raises the pressure much further.',
      instead:
        'No session. See a physician soon; with headache, chest discomfort or breathlessness, at once.',
      ask: ['physician', 'emergency-services'],
      sources: [williams2007, macDougall1985],
    },
    when: (client) => above(client.bloodPressure, NOT_NOW),
    limits: { training: 'refused' },
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'blood-pressure-reading-high',
      level: 'stop',
      what: 'The last reading at rest was at least 160 mmHg systolic or 100 diastolic.',
      why: 'Published advice asks for a physician before resistance training at such a reading.',
      instead: 'Ask the physician first.',
      ask: ['physician'],
      sources: [williams2007],
    },
    when: (client) =>
      !agreed(client) &&
      above(client.bloodPressure, ASK_FIRST) &&
      !above(client.bloodPressure, NOT_NOW),
    limits: { training: 'refused' },
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'blood-pressure-untreated',
      level: 'caution',
      what: 'Blood pressure is raised and not treated.',
      why: 'Straining, held breath and long holds send it highest: 320/250 mmHg was the mean peak on a leg press to failure. A light load to exhaustion raises it as much as a heavy one.',
      instead:
        'See a physician. Until then moderate loads, breathing out with every effort, well short of failure.',
      ask: ['physician'],
      sources: [macDougall1985, narloch1995, nery2010, projectConvention],
    },
    when: (client) => client.bloodPressure?.status === 'untreated',
    limits: pressureLimits,
    clinicianMayReplace: true,
  },
  {
    caution: {
      id: 'blood-pressure-treated',
      level: 'caution',
      what: 'Blood pressure is treated.',
      why: 'Straining, held breath and long holds still send it highest: 311/284 mmHg with a held breath against 198/175 breathing out, at the same load.',
      instead:
        'Moderate loads for 10 to 15 repetitions at up to 80 % of the one-rep max, breathing out with every effort, two left at the end. The physician’s own limits come first; the 80 % is a project choice, not medical advice.',
      ask: ['physician'],
      sources: [macDougall1985, narloch1995, nery2010, paluch2024, projectConvention],
    },
    when: (client) => client.bloodPressure?.status === 'treated',
    limits: pressureLimits,
    clinicianMayReplace: true,
  },
  {
    caution: {
      id: 'blood-pressure-doctor-not-asked',
      level: 'caution',
      what: 'The physician who treats the blood pressure has not agreed to lifting yet.',
      why: 'Only somebody who knows the readings and the medicine can say what is suitable.',
      instead: 'Ask before the first session.',
      ask: ['physician'],
      sources: [projectConvention],
    },
    when: (client) => !agreed(client) && client.bloodPressure?.status === 'treated',
    clinicianMayReplace: true,
  },
  {
    caution: {
      id: 'blood-pressure-unknown',
      level: 'caution',
      what: 'Blood pressure has not been measured lately.',
      why: 'Raised pressure is mostly not felt, and lifting with a held breath raises it most.',
      instead:
        'Have it measured; a pharmacy can. Until then no maximal single and no long hold, and breathe out with every effort.',
      ask: ['physician'],
      sources: [narloch1995, projectConvention],
    },
    when: (client) => client.bloodPressure?.status === 'unknown',
    limits: { maximalSingles: 'refused', longHolds: 'refused' },
    clinicianMayReplace: true,
  },
  {
    caution: {
      id: 'beta-blocker',
      level: 'note',
      what: 'A beta blocker is taken.',
      why: 'It holds the heart rate down, so a heart-rate target says little about effort.',
      instead: 'Go by repetitions in reserve and by breathing.',
      ask: ['physician'],
      sources: [projectConvention],
    },
    when: (client) => client.bloodPressure?.medicines?.includes('beta-blocker') === true,
    limits: { heartRateTargets: 'refused' },
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'pressure-medicine-dizziness',
      level: 'note',
      what: 'Medicine for blood pressure is taken.',
      why: 'Pressure can fall after a set and on getting up, more so in heat or after losing water.',
      instead: 'Rise slowly from benches and the floor, rest longer, and stop when dizzy.',
      ask: ['physician'],
      sources: [projectConvention],
    },
    when: (client) => (client.bloodPressure?.medicines?.length ?? 0) > 0,
    clinicianMayReplace: false,
  },
];
