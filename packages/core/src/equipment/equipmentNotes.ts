import type { EquipmentNote } from './Loading.ts';

export const FRICTION: EquipmentNote = {
  code: 'equipment.friction-not-included',
  message:
    'Friction is not included. What a scale or a dynamometer shows at the handle beats the nominal ratio, and numbers of two machines do not compare.',
};

export const START_UNKNOWN: EquipmentNote = {
  code: 'equipment.start-unknown',
  message:
    'What this machine resists with when empty is not known: ask, or weigh it. Until then only the added plates count, and they compare only on this machine.',
};

export const NOT_THE_FREE_LIFT: EquipmentNote = {
  code: 'equipment.not-the-free-lift',
  message: 'The number says nothing about the free-weight lift of the same name.',
};

export const SUPPORTED_SHARE: EquipmentNote = {
  code: 'equipment.supported-share',
  message:
    'The share of body weight changes with the position and was measured standing still. It is a starting guess for a machine, not an equal load.',
};

export const HELP_TOO_LARGE =
  'The help is as large as the weight that is moved, so there is nothing left to lift. Give less help than body weight.';
