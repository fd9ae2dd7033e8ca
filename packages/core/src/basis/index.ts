export type { Band } from './Band.ts';
export { inSentence } from './inSentence.ts';
export { language } from './language.ts';
export { normalBelow } from './normalBelow.ts';
export { normalDensity } from './normalDensity.ts';
export { normalQuantile } from './normalQuantile.ts';
export { bad, good, type Outcome, type Problem } from './Problem.ts';
export { requireNumber } from './requireNumber.ts';
export type { Source } from './Source.ts';
