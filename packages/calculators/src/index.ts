export { type Address, decodeAddress } from './address/decodeAddress.ts';
export { asSearch, encodeAddress, type OtherParameters } from './address/encodeAddress.ts';
export { calculators } from './calculators.ts';
export type {
  Answer,
  Certainty,
  Headline,
  NextLink,
  NoAnswer,
  ShownResult,
  Unreadable,
  Why,
} from './contract/Answer.ts';
export type { Calculator } from './contract/Calculator.ts';
export type {
  CalculatorResult,
  ResultBand,
  ResultCaution,
  ResultProblem,
} from './contract/CalculatorResult.ts';
export type { Computed, Definition, FieldGroup } from './contract/Definition.ts';
export { defineCalculator } from './contract/defineCalculator.ts';
export { jsonSchemaOf } from './contract/jsonSchemaOf.ts';
export { resultOf } from './contract/resultOf.ts';
export { textsOf } from './contract/textsOf.ts';
export { attributeOf } from './element/attributeOf.ts';
export type {
  ChoiceField,
  Columns,
  CountWindow,
  DateField,
  Field,
  FieldFace,
  Fields,
  InputOf,
  LoadField,
  ManyField,
  NumberField,
  RowsField,
  ScalarField,
  TempoField,
  TextField,
  Texts,
  TimeField,
  ValueOf,
  WindowField,
} from './fields/Field.ts';
export type { FieldProblem } from './fields/FieldProblem.ts';
export type { JsonSchema } from './fields/fieldSchema.ts';
export { findCalculator } from './findCalculator.ts';
export { loadCalculator } from './loadCalculator.ts';
export { renderCalculator } from './renderCalculator.tsx';
export { CalculatorApp, type CalculatorAppProps } from './ui/CalculatorApp.tsx';
export { words } from './words.ts';
