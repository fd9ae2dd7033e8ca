import type { CautionRule } from '../CautionRule.ts';
import type { ClientHealth } from '../ClientHealth.ts';
import { acsmGuidelines, garber2011, riebe2015, warburton2011 } from '../sources.ts';

const hasSymptoms = (client: ClientHealth) => (client.symptoms?.length ?? 0) > 0;
const hasCondition = (client: ClientHealth) => (client.conditions?.length ?? 0) > 0;
const doctorAgrees = (client: ClientHealth) => client.clinician?.agreesToTraining === true;

/** Signs, known disease, present activity and wanted intensity: the ideas of published screening. */
export const screeningRules: readonly CautionRule[] = [
  {
    caution: {
      id: 'signs-of-disease',
      level: 'stop',
      what: 'There are signs that can come from the heart, vessels, metabolism or kidneys.',
      why: 'Published screening asks for a physician before exercise when such a sign is there, whatever the intensity and however fit the person.',
      instead: 'Do not start, or stop. See a physician; if a sign is there now, get help at once.',
      ask: ['physician', 'emergency-services'],
      sources: [riebe2015, acsmGuidelines],
    },
    when: hasSymptoms,
    limits: { training: 'refused' },
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'known-disease-inactive',
      level: 'stop',
      what: 'A heart, vessel, metabolic or kidney disease is known, and no regular activity is.',
      why: 'Published screening asks for a physician first in this case, even before moderate effort.',
      instead: 'Ask the physician which effort to begin with.',
      ask: ['physician'],
      sources: [riebe2015],
    },
    when: (client) =>
      hasCondition(client) &&
      client.activity !== 'active' &&
      !hasSymptoms(client) &&
      !doctorAgrees(client),
    limits: { training: 'refused' },
    clinicianMayReplace: false,
  },
  {
    caution: {
      id: 'known-disease-active',
      level: 'caution',
      what: 'A heart, vessel, metabolic or kidney disease is known, without signs, in somebody who is active.',
      why: 'Published screening leaves moderate effort open and asks for a physician before vigorous effort. Sets near failure are vigorous.',
      instead: 'Moderate loads, well short of failure, until the physician has agreed to more.',
      ask: ['physician'],
      sources: [riebe2015, garber2011],
    },
    when: (client, context) =>
      hasCondition(client) &&
      client.activity === 'active' &&
      context.intensity !== 'moderate' &&
      !hasSymptoms(client) &&
      !doctorAgrees(client),
    limits: {
      maximalSingles: 'refused',
      failureChains: 'refused',
      longHolds: 'refused',
      forcedReps: 'refused',
      intensityCap: 0.69,
      repsInReserve: { atLeast: 3, firm: true },
    },
    clinicianMayReplace: true,
  },
  {
    caution: {
      id: 'little-activity',
      level: 'note',
      what: 'There was little activity in the last three months.',
      why: 'Published screening asks nobody first here, but lets people start with light to moderate effort and progress from there.',
      instead: 'Begin with easy sets for two or three weeks before sets go near failure.',
      ask: [],
      sources: [riebe2015],
    },
    when: (client) =>
      client.activity === 'inactive' && !hasCondition(client) && !hasSymptoms(client),
    limits: {
      failureChains: 'off-by-default',
      maximalSingles: 'off-by-default',
      repsInReserve: { atLeast: 2, firm: false },
    },
    clinicianMayReplace: true,
  },
  {
    caution: {
      id: 'not-all-asked',
      level: 'note',
      what: 'Signs, known disease, activity or blood pressure were not all asked about.',
      why: 'Those answers decide whether a physician has to be asked first.',
      instead: 'Ask them before the first hard session.',
      ask: ['coach'],
      sources: [riebe2015, warburton2011],
    },
    when: (client) =>
      !client.symptoms || !client.conditions || !client.activity || !client.bloodPressure,
    clinicianMayReplace: true,
  },
];
