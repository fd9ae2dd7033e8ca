import Ajv from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeAddress } from './address/decodeAddress.ts';
import { encodeAddress } from './address/encodeAddress.ts';
import { calculators } from './calculators.ts';
import type { ShownResult } from './contract/Answer.ts';
import type { Calculator } from './contract/Calculator.ts';
import { jsonSchemaOf } from './contract/jsonSchemaOf.ts';
import { textsOf } from './contract/textsOf.ts';
import type { Field, ScalarField } from './fields/Field.ts';
import { readField } from './fields/readField.ts';
import { joinRows, rowTexts } from './fields/rowTexts.ts';
import { findCalculator } from './findCalculator.ts';
import { loadCalculator } from './loadCalculator.ts';
import { renderCalculator } from './renderCalculator.tsx';
import { jsonInputs, LEAKS, nastyTexts } from './testing/fieldValues.ts';
import { runSnippet } from './testing/runSnippet.ts';
import { snippetTypeErrors } from './testing/snippetTypeErrors.ts';
import { structureFaults } from './testing/structureFaults.ts';
import { below } from './ui/below/words.ts';

describe('the list of calculators', () => {
  it('has unique ids that make addresses', () => {
    const ids = calculators.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('is found, and loaded on its own, by id', async () => {
    for (const calculator of calculators) {
      expect(findCalculator(calculator.id)).toBe(calculator);
      expect(await loadCalculator(calculator.id)).toBe(calculator);
    }
    expect(findCalculator('no-such-thing')).toBeUndefined();
    expect(await loadCalculator('no-such-thing')).toBeUndefined();
  });

  it('shows code that compiles', { timeout: 60_000 }, () => {
    expect(snippetTypeErrors(calculators.map((one) => resultOf(one).snippet))).toEqual([]);
  });
});

describe.each(calculators)('$id', (calculator) => {
  const fields = Object.entries(calculator.fields);

  it('says what it asks, and asks it in plain words', () => {
    expect(calculator.question).toMatch(/^[A-Z].*\?$/);
    for (const [, field] of fields) {
      expect(field.label).not.toBe('');
      expect(field.help).toMatch(/[.?]$/);
    }
  });

  it('has every field in exactly one group', () => {
    const grouped = calculator.groups.flatMap((group) => group.fields);
    expect([...grouped].sort()).toEqual(fields.map(([name]) => name).sort());
  });

  it('answers its defaults with everything a result needs', () => {
    const shown = resultOf(calculator);
    expect(Number.isFinite(shown.headline.exact)).toBe(true);
    expect(shown.headline.value).not.toBe('');
    expect(shown.why.steps.length).toBeGreaterThan(0);
    expect(shown.sources.length).toBeGreaterThan(0);
    if (shown.certainty.kind === 'band') {
      const { low, likely, high, level } = shown.certainty.band;
      expect(low).toBeLessThanOrEqual(likely);
      expect(likely).toBeLessThanOrEqual(high);
      expect(level).toBeGreaterThan(0);
      expect(level).toBeLessThan(1);
    }
  });

  it('has an accessible structure with number, reasons, sources, code, copy and print', () => {
    const html = renderCalculator(calculator);
    expect(structureFaults(html)).toEqual([]);
    const shown = resultOf(calculator);
    for (const part of [
      shown.headline.value,
      shown.why.formula,
      below.copyLink,
      below.print,
      below.copyCode,
      below.sources,
    ]) {
      expect(html).toContain(escaped(part));
    }
  });

  it('leads on to calculators that exist, with values they can read', () => {
    for (const link of resultOf(calculator).next) {
      const target = findCalculator(link.calculator);
      expect(target, link.calculator).toBeDefined();
      for (const [name, text] of Object.entries(link.carry)) {
        const field = target?.fields[name];
        expect(field, `${link.calculator}: ${name}`).toBeDefined();
        if (field) expect(readField(field, text, link.carry)).toMatchObject({ ok: true });
      }
    }
  });

  it('starts new rows with values that it can read', () => {
    for (const [name, field] of fields) {
      const cells = calculator.newRow(name, calculator.defaults);
      if (cells === null || field.kind !== 'rows') continue;
      const text = joinRows([...rowTexts(calculator.defaults[name] ?? ''), cells]);
      expect(readField(field, text, calculator.defaults)).toMatchObject({ ok: true });
    }
  });

  it('keeps any values through an address', () => {
    fc.assert(
      fc.property(jsonInputs(calculator), (input) => {
        const texts = textsOf(calculator, input);
        const query = encodeAddress(calculator, texts);
        expect(decodeAddress(calculator, query)).toEqual({ texts, others: [] });
      }),
    );
  });

  it('keeps damaged values and unknown names through an address', () => {
    fc.assert(
      fc.property(nastyTexts(calculator), fc.string({ unit: 'grapheme' }), (texts, other) => {
        const others = [['zz-unknown', other]] as const;
        const address = decodeAddress(calculator, encodeAddress(calculator, texts, others));
        expect(address).toEqual({ texts, others });
      }),
    );
  });

  it('has an empty address for the defaults', () => {
    expect(encodeAddress(calculator, calculator.defaults)).toBe('');
  });

  it('describes its input as JSON Schema', () => {
    const validate = new Ajv({ strict: true, allowUnionTypes: true }).compile(
      jsonSchemaOf(calculator),
    );
    expect(validate({})).toBe(true);
    fc.assert(fc.property(jsonInputs(calculator), (input) => validate(input) === true));
    expect(validate({ noSuchField: 1 })).toBe(false);
  });

  it('gives its defaults as the schema says', () => {
    const defaults = Object.fromEntries(fields.map(([name, field]) => [name, field.default]));
    expect(textsOf(calculator, defaults)).toEqual(calculator.defaults);
  });

  it('refuses what is beyond a limit, and says what would be right', () => {
    for (const { name, text, says, column } of beyondLimits(calculator)) {
      const whens = [calculator.fields[name]?.when, column?.when];
      const answer = calculator.answer({ ...visibleTexts(calculator, whens), [name]: text });
      const problems = answer.kind === 'unreadable' ? (answer.problems[name] ?? []) : [];
      expect(problems.map(({ message }) => message).join(' '), `${name}: ${text}`).toContain(says);
    }
  });

  it('answers any values in range without an exception or a number that is none', {
    timeout: 120_000,
  }, () => {
    fc.assert(
      fc.property(jsonInputs(calculator), (input) =>
        soundAnswer(calculator, textsOf(calculator, input)),
      ),
      // `tests/fuzz` tries thousands more
      { numRuns: 25 },
    );
  });

  it('answers nasty texts without an exception or a number that is none', {
    timeout: 120_000,
  }, () => {
    fc.assert(
      fc.property(nastyTexts(calculator), (texts) => soundAnswer(calculator, texts)),
      { numRuns: 60 },
    );
  });

  it('shows code that gives the shown result', { timeout: 120_000 }, async () => {
    await snippetAgrees(resultOf(calculator));
    await fc.assert(
      fc.asyncProperty(jsonInputs(calculator), async (input) => {
        const answer = calculator.answer(textsOf(calculator, input));
        if (answer.kind === 'result') await snippetAgrees(answer);
      }),
      { numRuns: 25 },
    );
  });
});

function resultOf(calculator: Calculator): ShownResult {
  const answer = calculator.answer({});
  if (answer.kind !== 'result') throw new Error(`${calculator.id}: no result for the defaults`);
  return answer;
}

function soundAnswer(calculator: Calculator, texts: Record<string, string>): void {
  const answer = calculator.answer(texts);
  if (answer.kind === 'none') expect(answer.message).toMatch(/[.]$/);
  if (answer.kind === 'unreadable') {
    for (const problem of Object.values(answer.problems).flat())
      expect(problem.message).not.toBe('');
    return;
  }
  if (answer.kind === 'result') {
    expect(Number.isFinite(answer.headline.exact)).toBe(true);
    expect(answer.sources.length).toBeGreaterThan(0);
  }
  const html = renderCalculator(calculator, { query: encodeAddress(calculator, texts) });
  expect(html).not.toMatch(LEAKS);
  expect(structureFaults(html)).toEqual([]);
}

async function snippetAgrees({ snippet, headline }: ShownResult): Promise<void> {
  const printed = await runSnippet(snippet);
  expect(printed.at(-1), snippet).toEqual([headline.exact]);
}

/** Texts with which a field, or a column of it, is part of the form: the first one or two choices that show it. */
function visibleTexts(
  calculator: Calculator,
  whens: readonly Field['when'][],
): Record<string, string> {
  const choices = Object.entries(calculator.fields).flatMap(([other, choice]) =>
    choice.kind === 'choice' ? choice.options.map(({ id }) => ({ [other]: id })) : [],
  );
  const pairs = choices.flatMap((one) => choices.map((two) => ({ ...one, ...two })));
  return (
    [{}, ...choices, ...pairs].find((texts) =>
      whens.every((when) => when?.({ ...calculator.defaults, ...texts }) ?? true),
    ) ?? {}
  );
}

interface Beyond {
  readonly name: string;
  readonly text: string;
  readonly says: string;
  /** The column of a rows field that it is in. */
  readonly column?: ScalarField;
}

function beyondLimits(calculator: Calculator): readonly Beyond[] {
  return Object.entries(calculator.fields).flatMap(([name, field]) =>
    beyondField(field).map((beyond) => ({ ...beyond, name })),
  );
}

function beyondField(field: Field): readonly Omit<Beyond, 'name'>[] {
  if (field.kind === 'rows') return beyondInRows(field);
  if (field.kind !== 'many') return beyondScalar(field);
  return [{ text: 'none-of-these', says: field.options[0]?.id ?? '' }];
}

function beyondScalar(field: ScalarField): readonly Omit<Beyond, 'name'>[] {
  switch (field.kind) {
    case 'number':
      return [field.min - 1, field.max + 1].map((value) => ({
        text: String(value),
        says: `from ${field.min} to ${field.max}`,
      }));
    case 'load':
      return [field.minKg - 1, field.maxKg + 1].map((value) => ({
        text: `${value}kg`,
        says: `from ${field.minKg} to ${field.maxKg} kg`,
      }));
    case 'window':
      return [
        { text: `${field.min}-${field.max + 1}`, says: `from ${field.min} to ${field.max}` },
        { text: `${field.min + 2}-${field.min + 1}`, says: `${field.min + 1}-${field.min + 2}` },
      ];
    case 'choice':
      return [{ text: 'none-of-these', says: field.options[0]?.id ?? '' }];
    case 'text':
      return [{ text: 'x'.repeat(field.maxLength + 1), says: `at most ${field.maxLength}` }];
    case 'date':
      return ['2026-02-30', '1899-12-31', '2200-01-01'].map((text) => ({
        text,
        says: `from ${field.min} to ${field.max}`,
      }));
    case 'time':
      return ['24:00', '18:60'].map((text) => ({ text, says: 'from 00:00 to 23:59' }));
    case 'tempo':
      return [{ text: '0-9-0-0', says: 'a pause alone is a hold and no repetition' }];
  }
}

function beyondInRows(field: Extract<Field, { kind: 'rows' }>): readonly Omit<Beyond, 'name'>[] {
  const columns = Object.values(field.columns);
  const good = columns.map((column) => String(scalarText(column)));
  return columns.flatMap((column, place) =>
    beyondScalar(column).map(({ text, says }) => ({
      text: good.with(place, text).join('_'),
      says,
      column,
    })),
  );
}

function scalarText(column: ScalarField): string {
  const value = column.default;
  if (value === null) return '';
  if (typeof value === 'object' && 'unit' in value) return `${value.value}${value.unit}`;
  if (typeof value === 'object') return `${value.low}-${value.high}`;
  return String(value);
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
