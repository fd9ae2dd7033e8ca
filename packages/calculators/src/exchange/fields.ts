import { exercises, loadedPositions, type PositionId } from '@windlass/core/anatomy';
import type { ComplaintId, RedFlagId } from '@windlass/core/safety';
import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields, Texts } from '../fields/Field.ts';
import { exerciseField } from '../shared/exerciseFields.ts';
import { type HealthInput, healthFields, healthGroup } from '../shared/healthFields.ts';
import { stopsField } from '../shared/stopsField.ts';
import { type LoadId, loadOptions, type PlaceId, placeOptions, stationOptions } from './places.ts';
import { said } from './words.ts';

const isOwnPlace = ({ place }: Texts) => place === 'own';

/** The form, with a crew member of the boathouse whose elbow complains about the pulldown. */
export const fields = {
  wanted: {
    kind: 'choice',
    label: 'Wanted',
    help: 'Something instead of one exercise, or anything for a part of the body.',
    options: [
      { id: 'exercise', label: 'Instead of one exercise' },
      { id: 'chest', label: 'Something for the chest' },
      { id: 'back', label: 'Something for the back' },
      { id: 'shoulders', label: 'Something for the shoulders' },
      { id: 'arms', label: 'Something for the arms' },
      { id: 'legs', label: 'Something for the legs' },
      { id: 'trunk', label: 'Something for the trunk' },
    ],
    default: 'exercise',
  },
  exercise: {
    ...exerciseField(
      {
        label: 'Exercise that cannot stay',
        help: 'A few letters find it.',
        default: 'cable-pulldown',
      },
      exercises,
    ),
    when: ({ wanted }: Texts) => wanted === 'exercise',
  },
  complaints: {
    kind: 'many',
    label: 'What hurts',
    help: 'Where and when it hurts. Leave all empty for no complaint.',
    options: [
      { id: 'shoulder-front-bottom-of-press', label: 'Front of the shoulder, low in a press' },
      { id: 'shoulder-raising-the-arm', label: 'Shoulder, raising the arm' },
      { id: 'shoulder-slips-or-unstable', label: 'Shoulder feels loose or slips' },
      { id: 'elbow-outer', label: 'Elbow, outer side' },
      { id: 'elbow-back-or-inner', label: 'Elbow, back or inner side' },
      { id: 'wrist', label: 'Wrist' },
      { id: 'low-back', label: 'Low back' },
      { id: 'hip-front-deep-bend', label: 'Front of the hip, bent deep' },
      { id: 'knee-front', label: 'Front of the knee' },
      { id: 'knee-tendon-front', label: 'Tendon below the kneecap' },
      { id: 'ankle', label: 'Ankle' },
    ],
    default: ['elbow-outer'],
  },
  flags: {
    kind: 'many',
    label: 'Signs beside the pain',
    help: 'Each is for a clinician before that joint is loaded.',
    options: [
      { id: 'pain-at-night', label: 'Pain at night or at rest' },
      { id: 'after-an-injury', label: 'It began with an injury' },
      { id: 'weakness', label: 'New weakness' },
      { id: 'numbness-or-tingling', label: 'Numbness or tingling' },
      { id: 'swelling-or-heat', label: 'Swelling or heat' },
      { id: 'locking-or-giving-way', label: 'It locks or gives way' },
      { id: 'fever-or-unwell', label: 'Fever, or feeling ill' },
      { id: 'bladder-or-bowel-change', label: 'Bladder or bowel has changed' },
    ],
    default: [],
    when: ({ complaints }: Texts) => complaints !== '',
  },
  notAllowed: {
    kind: 'text',
    label: 'Not allowed by a clinician',
    help: 'In their words, with commas between: squats, bent-over rows.',
    optional: true,
    maxLength: 200,
    default: null,
  },
  handOut: {
    kind: 'choice',
    label: 'A hand out of use',
    help: 'It may not grip, push, hang or lean.',
    options: [
      { id: 'none', label: 'None' },
      { id: 'left', label: 'Left' },
      { id: 'right', label: 'Right' },
      { id: 'both', label: 'Both' },
    ],
    default: 'none',
  },
  place: {
    kind: 'choice',
    label: 'What is there',
    help: 'The boathouse has bars, dumbbells, a cable, leg press and leg extension. Body and floor are always there.',
    options: placeOptions,
    default: 'boathouse',
  },
  loads: {
    kind: 'many',
    label: 'Loads there',
    help: 'Every kind that there is.',
    options: loadOptions,
    default: ['dumbbell'],
    when: isOwnPlace,
  },
  stations: {
    kind: 'many',
    label: 'Stations there',
    help: 'Benches, bars and machines; a cable column also serves as high pulley and low row.',
    options: stationOptions,
    default: ['flat-bench'],
    when: isOwnPlace,
  },
  company: {
    kind: 'choice',
    label: 'Who is there',
    help: 'Somebody who can take a load that does not come up again.',
    options: [
      { id: 'partner', label: 'A partner' },
      { id: 'alone', label: 'Nobody' },
    ],
    default: 'alone',
  },
  stops: stopsField,
  toFailure: {
    kind: 'choice',
    label: 'Sets end',
    help: 'To failure and alone only what can be left at any point is offered.',
    options: [
      { id: 'yes', label: 'At failure' },
      { id: 'no', label: 'Before it' },
    ],
    default: 'yes',
  },
  positions: {
    kind: 'many',
    label: 'Not in these positions',
    help: 'Beside what the complaint rules out by itself.',
    options: loadedPositions.map(({ id, what }) => ({ id, label: said.capital(what) })),
    default: [],
  },
  ...healthFields,
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Wanted', fields: ['wanted', 'exercise'] },
  { legend: 'Complaint', fields: ['complaints', 'flags', 'notAllowed', 'handOut'] },
  { legend: 'There', fields: ['place', 'loads', 'stations', 'company', 'stops', 'toFailure'] },
  { legend: 'Positions to leave out', fields: ['positions'], folded: true },
  healthGroup,
];

/** The values of the form. */
export interface ExchangeInput extends HealthInput {
  readonly wanted: 'exercise' | 'chest' | 'back' | 'shoulders' | 'arms' | 'legs' | 'trunk';
  readonly exercise: string;
  readonly complaints: readonly ComplaintId[];
  readonly flags: readonly RedFlagId[];
  readonly notAllowed: string | null;
  readonly handOut: 'none' | 'left' | 'right' | 'both';
  readonly place: PlaceId;
  readonly loads: readonly LoadId[];
  readonly stations: readonly string[];
  readonly company: 'partner' | 'alone';
  readonly stops: 'yes' | 'no';
  readonly toFailure: 'yes' | 'no';
  readonly positions: readonly PositionId[];
}
