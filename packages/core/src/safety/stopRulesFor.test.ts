import { describe, expect, it } from 'vitest';
import { stopRulesFor } from './stopRulesFor.ts';

describe('stopRulesFor', () => {
  it('gives everybody the same rules, gravest first', () => {
    const rules = stopRulesFor({});
    expect(rules[0]?.id).toBe('chest-discomfort');
    expect(rules.map(({ id }) => id)).toContain('dark-urine');
  });

  it('adds the signs of a pregnancy in front', () => {
    expect(stopRulesFor({ pregnancy: 'pregnant' }).slice(2)).toEqual(stopRulesFor({}));
  });
});
