import type { HoldStage } from './Stage.ts';

/** Where in its range a load is held, as it stands in a sentence. */
export const positionWords: Readonly<Record<HoldStage['at'], string>> = {
  stretched: 'in the stretched position',
  middle: 'in the middle position',
  contracted: 'in the contracted position',
};
