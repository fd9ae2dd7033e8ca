/** The parts that calculators are made of, for pages that are made of them too. */

export { inSentence, language } from '@windlass/core/basis';
export type {
  ChoiceField,
  LoadField,
  NumberField,
  TempoField,
  WindowField,
} from '../fields/Field.ts';
export { readDecimal } from '../fields/readDecimal.ts';
export { drawnPlates } from '../shared/plateWords.ts';
export { words } from '../words.ts';
export { BarDrawing, type DrawnPlate } from './BarDrawing.tsx';
export { CodeBlock } from './CodeBlock.tsx';
export { CopyButton } from './CopyButton.tsx';
export { formatNumber } from './formatNumber.ts';
export { LoadControl } from './LoadControl.tsx';
export { NumberControl } from './NumberControl.tsx';
export { TempoControl } from './TempoControl.tsx';
export { TextInput } from './TextInput.tsx';
export { useAwake } from './useAwake.ts';
export { WindowControl } from './WindowControl.tsx';
