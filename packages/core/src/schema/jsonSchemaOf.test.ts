import { describe, expect, it } from 'vitest';
import { jsonSchemaOf, schemaNames } from './jsonSchemaOf.ts';

describe('jsonSchemaOf', () => {
  it.each(schemaNames)('describes what may be written for %s', (name) => {
    const schema = jsonSchemaOf(name);
    expect(schema).toMatchObject({ type: 'object', additionalProperties: false });
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
  });

  it('tells the kinds of equipment apart', () => {
    const text = JSON.stringify(jsonSchemaOf('gym'));
    for (const kind of [
      'barbell',
      'one-post',
      'fixed',
      'handles',
      'stack',
      'machine',
      'body',
      'band',
    ]) {
      expect(text).toContain(`"const":"${kind}"`);
    }
  });
});
