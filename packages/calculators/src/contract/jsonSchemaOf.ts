import { fieldSchema, type JsonSchema } from '../fields/fieldSchema.ts';
import type { Calculator } from './Calculator.ts';

/** JSON Schema (2020-12) of a calculator's input; every property may be left out for its default. */
export function jsonSchemaOf(calculator: Calculator): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: calculator.title,
    description: calculator.question,
    type: 'object',
    additionalProperties: false,
    properties: Object.fromEntries(
      Object.entries(calculator.fields).map(([name, field]) => [name, fieldSchema(field)]),
    ),
  };
}
