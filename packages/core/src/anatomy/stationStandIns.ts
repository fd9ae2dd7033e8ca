import type { Station } from './Exercise.ts';

/** What a station can also serve as. A choice of this project. */
export const stationStandIns: Readonly<Partial<Record<Station, readonly Station[]>>> = {
  cable: ['high-pulley', 'seated-cable-row'],
  'incline-bench': ['flat-bench', 'upright-bench', 'chair'],
  'flat-bench': ['chair'],
  'upright-bench': ['chair'],
  rack: ['low-bar'],
  'guided-bar': ['low-bar'],
};
