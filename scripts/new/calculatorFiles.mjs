/** The files of a calculator that works at once (a share of a load), and the two lists that name it. */
export function calculatorFiles(id, [title = titleOf(id), question = `${titleOf(id)}?`], read) {
  const name = camelCase(id);
  const folder = `packages/calculators/src/${id}`;
  return {
    made: [
      { path: `${folder}/words.ts`, text: words() },
      { path: `${folder}/fields.ts`, text: fields() },
      { path: `${folder}/compute.ts`, text: compute() },
      { path: `${folder}/snippet.ts`, text: snippet() },
      { path: `${folder}/view.tsx`, text: view() },
      { path: `${folder}/definition.ts`, text: definition(id, name, title, question) },
      { path: `${folder}/definition.test.ts`, text: test(id, name) },
    ],
    changed: [
      listed(read, 'packages/calculators/src/calculators.ts', name, id),
      loaded(read, 'packages/calculators/src/loadCalculator.ts', name, id),
    ],
  };
}

const titleOf = (id) => `${id[0].toUpperCase()}${id.slice(1).replaceAll('-', ' ')}`;
const camelCase = (id) => id.replace(/-(.)/g, (_, letter) => letter.toUpperCase());

function listed(read, path, name, id) {
  const text = read(path)
    .replace(
      /(import type \{ Calculator \}.*\n)/,
      `$1import { ${name} } from './${id}/definition.ts';\n`,
    )
    .replace(/\n\];/, `\n  ${name},\n];`);
  return { path, text };
}

function loaded(read, path, name, id) {
  const line = `  '${id}': async () => (await import('./${id}/definition.ts')).${name},\n`;
  return { path, text: read(path).replace(/\n\};/, `\n${line}};`) };
}

const words = () => `/** Every word of this calculator. */
export const said = {
  load: { label: 'Load', help: 'The load to take a share of.' },
  percent: { label: 'Share', help: 'How much of it.' },
  group: 'Load',
  result: 'The share of the load',
  exact: 'Arithmetic, to the last digit.',
  formula: 'share = load × percent ÷ 100',
  step: (load: string, percent: number, share: string) => \`\${load} × \${percent} ÷ 100 = \${share}\`,
  restsOn: 'Arithmetic alone.',
} as const;
`;

const fields = () => `import type { FieldGroup } from '../contract/Definition.ts';
import type { Fields } from '../fields/Field.ts';
import { unitField } from '../shared/unitField.ts';
import { said } from './words.ts';

export const fields = {
  load: {
    kind: 'load',
    ...said.load,
    minKg: 0,
    maxKg: 500,
    step: { kg: 2.5, lb: 5 },
    default: { value: 60, unit: 'kg' },
  },
  percent: { kind: 'number', ...said.percent, unit: '%', min: 1, max: 100, step: 1, default: 80 },
  unit: unitField,
} as const satisfies Fields;

export const groups: readonly FieldGroup<keyof typeof fields>[] = [
  { legend: said.group, fields: ['load', 'percent', 'unit'] },
];
`;

const compute = () => `import { type Load, loadFromValue, scaleLoad } from '@windlass/core/load';
import type { Computed } from '../contract/Definition.ts';
import type { InputOf } from '../fields/Field.ts';
import type { fields } from './fields.ts';

export type Input = InputOf<typeof fields>;

export interface Result {
  readonly share: Load;
}

/** Pure: the same input gives the same result; no clock, no storage. */
export function compute({ load, percent }: Input): Computed<Result> {
  return { kind: 'result', result: { share: scaleLoad(loadFromValue(load), percent, 100) } };
}
`;

const snippet = () => `import { loadFace } from '../shared/loadWords.ts';
import type { Input, Result } from './compute.ts';

/** The same number with the library. */
export function snippet({ load, percent, unit }: Input, { share }: Result): string {
  const read = unit === 'kg' ? 'toKg' : 'toLb';
  return \`import { \${[load.unit, 'scaleLoad', read].join(', ')} } from '@windlass/core/load';

const share = scaleLoad(\${load.unit}(\${load.value}), \${percent}, 100);
console.log(\${read}(share)); // \${loadFace(share, unit).exact}
\`;
}
`;

const view = () => `import { loadWords } from '../shared/loadWords.ts';
import type { Input, Result } from './compute.ts';
import { said } from './words.ts';

interface ViewProps {
  readonly input: Input;
  readonly result: Result;
}

/** The picture of the result. */
export function View({ input, result }: ViewProps) {
  return (
    <p>
      {said.result}: {loadWords(result.share, input.unit)}
    </p>
  );
}
`;

const definition = (
  id,
  name,
  title,
  question,
) => `import { loadFromValue } from '@windlass/core/load';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { compute } from './compute.ts';
import { fields, groups } from './fields.ts';
import { snippet } from './snippet.ts';
import { View } from './view.tsx';
import { said } from './words.ts';

const ARITHMETIC = { id: 'arithmetic', citation: said.restsOn, standing: 'convention' } as const;

export const ${name} = defineCalculator({
  id: '${id}',
  title: ${JSON.stringify(title)},
  question: ${JSON.stringify(question)},
  fields,
  groups,
  compute,
  headline: ({ unit }, { share }) => ({ label: said.result, ...loadFace(share, unit) }),
  certainty: () => ({ kind: 'exact', says: said.exact }),
  why: ({ load, percent, unit }, { share }) => ({
    formula: said.formula,
    steps: [said.step(loadWords(loadFromValue(load), unit), percent, loadWords(share, unit))],
    restsOn: said.restsOn,
  }),
  cautions: () => [],
  sources: () => [ARITHMETIC],
  next: () => [],
  snippet,
  view: (input, result) => View({ input, result }),
});
`;

const test = (id, name) => `import { describe, expect, it } from 'vitest';
import { shownResult } from '../testing/shownResult.ts';
import { ${name} } from './definition.ts';

describe('${id}', () => {
  it('takes a share of a load', () => {
    // 80 % of 60 kg, by hand.
    expect(shownResult(${name}, { load: '60 kg', percent: '80' }).headline.exact).toBe(48);
  });
});
`;
