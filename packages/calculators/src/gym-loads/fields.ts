import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields, InputOf, Texts } from '../fields/Field.ts';
import { barFields } from '../shared/barFields.ts';
import { boathouse } from '../shared/boathouse.ts';
import { gearFields } from '../shared/gearFields.ts';
import { unitField } from '../shared/unitField.ts';

const when =
  (...gears: readonly string[]) =>
  (texts: Texts) =>
    gears.includes(texts.gear ?? '');
const hanging = (texts: Texts) => texts.gear === 'body' && texts.added === 'belt';
const helped = (texts: Texts) => texts.gear === 'body' && texts.added === 'help';
const sledKnown = (texts: Texts) => texts.gear === 'machine' && texts.start === 'known';

/** The form: any kind of equipment, with what the boathouse has of it filled in. */
export const fields = {
  gear: {
    kind: 'choice',
    label: 'Equipment',
    help: 'What it can make is counted from what is there.',
    options: [
      { id: 'bar', label: 'Bar with plates' },
      { id: 'dumbbells', label: 'Dumbbells of the rack' },
      { id: 'handles', label: 'Dumbbell handles with plates' },
      { id: 'stack', label: 'Stack with a pin' },
      { id: 'machine', label: 'Machine with plates' },
      { id: 'body', label: 'Body weight' },
      { id: 'post', label: 'One post: pin, landmine, belt' },
      { id: 'band', label: 'Elastic band' },
    ],
    default: 'dumbbells',
  },
  target: {
    kind: 'load',
    label: 'Load wanted',
    help: 'May stay empty: then all loads are counted.',
    optional: true,
    minKg: 0,
    maxKg: 600,
    step: { kg: 1, lb: 2.5 },
    default: { value: 26, unit: 'kg' },
    when: (texts) => texts.gear !== 'band',
  },
  wantedAs: {
    kind: 'choice',
    label: 'That number is',
    help: 'On these, the number that is read and the load that is moved are two things.',
    options: [
      { id: 'moved', label: 'The load moved' },
      { id: 'shown', label: 'The number on it' },
    ],
    default: 'shown',
    when: (texts) => when('stack', 'body')(texts) || sledKnown(texts),
  },
  goal: {
    kind: 'number',
    label: 'Reps wanted with the next load',
    help: 'Tells how many to do with this one first.',
    unit: 'reps',
    min: 1,
    max: 20,
    step: 1,
    default: 8,
    when: (texts) => texts.gear !== 'band',
  },
  show: unitField,
  hands: {
    kind: 'choice',
    label: 'In each hand, or in one',
    help: 'One in each hand needs two of a weight.',
    options: [
      { id: '2', label: 'Each hand' },
      { id: '1', label: 'One hand' },
    ],
    default: '2',
    when: when('dumbbells', 'handles'),
  },
  bar: { ...barFields.bar, when: when('bar') },
  barWeight: {
    ...barFields.barWeight,
    when: (texts) => texts.gear === 'bar' && texts.bar === 'other',
  },
  collar: { ...barFields.collar, when: when('bar') },
  dumbbells: { ...gearFields.dumbbells, when: when('dumbbells') },
  handle: {
    kind: 'load',
    label: 'One handle with its collars',
    help: 'As weighed, without plates.',
    minKg: 0.1,
    maxKg: 20,
    step: { kg: 0.25, lb: 0.5 },
    default: { value: 2, unit: 'kg' },
    when: when('handles'),
  },
  smallPlates: {
    ...barFields.plates,
    label: 'Plates for the handles, by the piece',
    help: 'Both ends of a handle carry the same; a pair of handles needs four of a kind.',
    default: boathouse.handlePlates,
    when: when('handles'),
  },
  stackFirst: gearFields.stackFirst,
  stackStep: gearFields.stackStep,
  stackPlates: gearFields.stackPlates,
  pulley: gearFields.pulley,
  addOn: gearFields.addOn,
  start: {
    kind: 'choice',
    label: 'Resistance when empty',
    help: 'The sled, arm or guided bar without plates. Nobody can know it from the outside.',
    options: [
      { id: 'known', label: 'Known' },
      { id: 'unknown', label: 'Not known' },
    ],
    default: 'known',
    when: when('machine'),
  },
  startLoad: {
    kind: 'load',
    label: 'Weight of the moving part',
    help: 'Off the label, or weighed.',
    minKg: 0,
    maxKg: 200,
    step: { kg: 1, lb: 2.5 },
    default: { value: 47, unit: 'kg' },
    when: sledKnown,
  },
  rail: {
    kind: 'number',
    label: 'Rail against the floor',
    help: 'Straight up is 90. Many leg presses have 45.',
    unit: '°',
    min: 1,
    max: 90,
    step: 1,
    default: 45,
    when: when('machine'),
  },
  posts: {
    kind: 'choice',
    label: 'Plates go on',
    help: 'On both sides, plates go on in pairs.',
    options: [
      { id: '2', label: 'Both sides' },
      { id: '1', label: 'One post' },
    ],
    default: '2',
    when: when('machine'),
  },
  bodyWeight: {
    kind: 'load',
    label: 'Body weight today',
    help: 'Stays in this address and goes nowhere else.',
    minKg: 20,
    maxKg: 300,
    step: { kg: 0.5, lb: 1 },
    default: { value: 78, unit: 'kg' },
    when: when('body'),
  },
  moves: {
    kind: 'choice',
    label: 'What the arms carry',
    help: 'In a push-up the feet or knees carry the rest.',
    options: [
      { id: 'all', label: 'All: chin-up, dip' },
      { id: 'push-up', label: 'Push-up' },
      { id: 'knees', label: 'On the knees' },
    ],
    default: 'all',
    when: when('body'),
  },
  added: {
    kind: 'choice',
    label: 'Added or taken off',
    help: 'A belt adds. Help from a machine or a counterweight takes off.',
    options: [
      { id: 'belt', label: 'Belt' },
      { id: 'help', label: 'Help' },
      { id: 'nothing', label: 'Nothing' },
    ],
    default: 'belt',
    when: when('body'),
  },
  beltBase: {
    kind: 'load',
    label: 'The belt with its chain',
    help: 'It hangs on the body too.',
    minKg: 0,
    maxKg: 10,
    step: { kg: 0.25, lb: 0.5 },
    default: { value: 1, unit: 'kg' },
    when: hanging,
  },
  helpStep: {
    kind: 'load',
    label: 'Help of one plate',
    help: 'How far the help rises from setting to setting.',
    minKg: 0.5,
    maxKg: 25,
    step: { kg: 1, lb: 2.5 },
    default: { value: 5, unit: 'kg' },
    when: helped,
  },
  helpPlates: {
    kind: 'number',
    label: 'Settings with help',
    help: 'Without help it is the whole weight again.',
    unit: '',
    min: 1,
    max: 40,
    step: 1,
    default: 12,
    when: helped,
  },
  form: {
    kind: 'choice',
    label: 'The post is',
    help: 'A landmine weighs less in the hands the steeper it stands.',
    options: [
      { id: 'loading-pin', label: 'Loading pin' },
      { id: 'landmine', label: 'Landmine' },
      { id: 'belt', label: 'Hip belt' },
    ],
    default: 'loading-pin',
    when: when('post'),
  },
  base: {
    kind: 'load',
    label: 'Without any plate',
    help: 'The pin, the belt with its chain, or the end of the bar held level.',
    minKg: 0,
    maxKg: 60,
    step: { kg: 0.5, lb: 1 },
    default: { value: 2.5, unit: 'kg' },
    when: when('post'),
  },
  plates: {
    ...barFields.plates,
    when: (texts) => when('bar', 'machine', 'post')(texts) || hanging(texts),
  },
} as const satisfies Fields;

export type GymInput = InputOf<typeof fields>;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: 'Wanted', fields: ['gear', 'target', 'wantedAs', 'goal', 'show'] },
  {
    legend: 'How it is used',
    fields: [
      'hands',
      'handle',
      'bar',
      'barWeight',
      'pulley',
      'start',
      'startLoad',
      'rail',
      'posts',
      'form',
      'base',
    ],
  },
  {
    legend: 'The body',
    fields: ['bodyWeight', 'moves', 'added', 'beltBase', 'helpStep', 'helpPlates'],
  },
  {
    legend: 'What this gym has of it',
    fields: [
      'collar',
      'dumbbells',
      'smallPlates',
      'stackFirst',
      'stackStep',
      'stackPlates',
      'addOn',
      'plates',
    ],
    folded: true,
  },
];
