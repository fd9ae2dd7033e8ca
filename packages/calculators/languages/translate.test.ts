import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { messagesIn } from './messagesIn.ts';
import { translate } from './translate.ts';
import { inLanguage } from './translatedSources.ts';

const german = new Map([
  ['Load', 'Last'],
  ['Lift {0} times, then rest {1}.', 'Erst {1} Pause, dann {0}-mal heben.'],
  ['a minute', 'eine Minute'],
  ['lift', 'Heben'],
]);

describe('inLanguage', () => {
  it('names the language where the library keeps it', () => {
    const path = 'packages/core/src/basis/language.ts';
    const source = readFileSync(path, 'utf8');
    expect(inLanguage('de', path, source)).toContain("export const language: string = 'de';");
    expect(inLanguage('de', 'other.ts', source)).toBe(source);
  });
});

describe('translate', () => {
  it('replaces what people read, and nothing else', () => {
    const source = `
      import { lift } from './Load.ts';
      export const field = { kind: 'lift', label: 'Load', id: 'Load' } as const;
      if (field.kind === 'lift') throw new RangeError('Load');
    `;
    expect(translate('fields.ts', source, german)).toBe(
      source.replace("label: 'Load'", 'label: "Last"'),
    );
  });

  // biome-ignore-start lint/suspicious/noTemplateCurlyInString: these are pieces of source code
  it('puts values in the order of the other language, and translates inside them', () => {
    const source = 'const says = `Lift ${n} times, then rest ${n > 3 ? "a minute" : rest(n)}.`;';
    expect(translate('view.tsx', source, german)).toBe(
      'const says = `Erst ${n > 3 ? "eine Minute" : rest(n)} Pause, dann ${n}-mal heben.`;',
    );
  });

  it('takes every text of a words file, short ones too', () => {
    const source = "export const said = { lift: 'lift', of: (n: number) => `${n} kg` } as const;";
    expect(messagesIn('a/words.ts', source).map(({ text }) => text)).toEqual(['lift', '{0} kg']);
    expect(messagesIn('a/other.ts', "const kinds = { lift: 'lift' };")).toEqual([]);
  });

  it('leaves what it has no words for, and refuses a value that is not there', () => {
    const source = 'const a = `Wait ${n} s.`;';
    expect(translate('a.ts', source, german)).toBe(source);
    expect(() => translate('a.ts', source, new Map([['Wait {0} s.', '{1} s warten.']]))).toThrow(
      /no value \{1\}/,
    );
  });
  // biome-ignore-end lint/suspicious/noTemplateCurlyInString: these are pieces of source code
});
