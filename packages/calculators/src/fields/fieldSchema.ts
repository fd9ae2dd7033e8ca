import type { Field, ScalarField } from './Field.ts';

/** A JSON Schema (2020-12) of a field's value. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** The schema of the value that `readField` gives, with the field's label and help in it. */
export function fieldSchema(field: Field): JsonSchema {
  const face = { title: field.label, description: field.help };
  const schema = schemaOf(field);
  return field.optional
    ? { ...face, anyOf: [schema, { type: 'null' }], default: field.default }
    : { ...face, ...schema, default: field.default };
}

function schemaOf(field: Field): JsonSchema {
  if (field.kind === 'rows') return rowsSchema(field);
  if (field.kind !== 'many') return scalarSchema(field);
  const items = { enum: field.options.map(({ id }) => id) };
  return { type: 'array', uniqueItems: true, items };
}

function rowsSchema(field: Extract<Field, { kind: 'rows' }>): JsonSchema {
  const columns = Object.entries(field.columns);
  return {
    type: 'array',
    minItems: field.minRows,
    maxItems: field.maxRows,
    items: {
      type: 'object',
      additionalProperties: false,
      required: columns.map(([name]) => name),
      properties: Object.fromEntries(columns.map(([name, column]) => [name, fieldSchema(column)])),
    },
  };
}

function scalarSchema(field: ScalarField): JsonSchema {
  switch (field.kind) {
    case 'number':
      return {
        type: field.step === 1 ? 'integer' : 'number',
        minimum: field.min,
        maximum: field.max,
      };
    case 'load':
      return {
        type: 'object',
        additionalProperties: false,
        required: ['value', 'unit'],
        properties: { value: { type: 'number' }, unit: { enum: ['kg', 'lb'] } },
        $comment: `from ${field.minKg} to ${field.maxKg} kg`,
      };
    case 'tempo':
      return { type: 'string', minLength: 3, maxLength: 40 };
    case 'window': {
      const count = { type: 'integer', minimum: field.min, maximum: field.max };
      return {
        type: 'object',
        additionalProperties: false,
        required: ['low', 'high'],
        properties: { low: count, high: count },
      };
    }
    case 'choice':
      return { enum: field.options.map((option) => option.id) };
    case 'text':
      return { type: 'string', maxLength: field.maxLength };
    case 'date':
      return {
        type: 'string',
        pattern: '^\\d{4}-\\d{2}-\\d{2}$',
        $comment: `from ${field.min} to ${field.max}`,
      };
    case 'time':
      return { type: 'string', pattern: '^([01]\\d|2[0-3]):[0-5]\\d$' };
  }
}
