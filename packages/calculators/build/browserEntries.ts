import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { BuildOptions, Plugin } from 'esbuild';
import type { Options } from 'tsup';
import type { Catalogue } from '../languages/translate.ts';
import { apart, givingOut, namesAsked } from './apart.ts';
import { bundleText, inBoth, modulesOf } from './bundles.ts';
import { calculatorsApart, definitionOf, ids, live, liveApart } from './calculatorFiles.ts';
import { fromSources, type Rewrite } from './fromSources.ts';
import { inlineStyles } from './inlineStyles.ts';
import { laterApart, laterEntry } from './laterParts.ts';
import { type LaterTexts, textsIn, withoutLongTexts } from './laterTexts.ts';

import { allColumns, unreadColumns, workedOut } from './workedOut.ts';
import { countdown, writeStandalone } from './writeStandalone.ts';

const packages = resolve('..');
const frame = ['src/hydrate.tsx', 'src/element.tsx'];
const app = resolve('src/ui/CalculatorApp.tsx');
const base = resolve('src/base.ts');

export interface BrowserBuild {
  readonly outDir: string;
  /** Of another language. */
  readonly catalogue?: Catalogue;
  readonly rewrites?: readonly Rewrite[];
}

/**
 * What browsers fetch, the core inside: the frame; the base that it shares with all calculators;
 * each calculator up to its answer; and what stands below an answer, fetched after it.
 */
export async function browserEntries(of: BrowserBuild): Promise<Options[]> {
  const { outDir, catalogue, rewrites = [] } = of;
  const sources = (...more: Rewrite[]): Plugin[] => [
    workedOut({ catalogue }),
    fromSources(packages, [...rewrites, ...more]),
  ];
  const liveText = await bundleText({ entryPoints: [live] }, sources());
  const options = {
    outDir,
    format: 'esm',
    target: 'es2023',
    treeshake: true,
    splitting: false,
    external: [/^preact/],
    noExternal: [/^@windlass\/core/],
  } satisfies Options;

  const inFrame = [inlineStyles, calculatorsApart, ...sources()];
  const everyCalculator = [liveApart, ...sources()];
  const shared = inBoth(
    await modulesOf({ entryPoints: frame }, inFrame),
    await modulesOf({ entryPoints: ids.map(definitionOf) }, everyCalculator),
  );
  const calculators = await Promise.all(ids.map(calculator));
  const parts: Options[] = [
    {
      ...options,
      entry: frame,
      esbuildPlugins: [laterApart(app, './more.js'), apart(shared, './base.js'), ...inFrame],
      onSuccess: () => writeRest(app, 'more.js', {}, [apart(shared, './base.js'), ...sources()]),
    },
    { ...options, entry: [base], esbuildPlugins: sources(givingOut(base, shared)) },
    ...calculators,
    {
      ...options,
      entry: { 'calculators/past-failure-live': live },
      esbuildPlugins: [apart(shared, '../base.js'), ...sources()],
    },
  ];
  const oneIsReady = countdown(parts.length, () => writeStandalone(outDir));
  return parts.map((part) => ({
    ...part,
    onSuccess: async () => {
      if (typeof part.onSuccess === 'function') await part.onSuccess();
      await oneIsReady();
    },
  }));

  /** A calculator without what comes later. It gives out what that shares with it. */
  async function calculator(id: string): Promise<Options> {
    const definition = definitionOf(id);
    const texts: LaterTexts = [];
    const short = withoutLongTexts(texts);
    const without = [
      laterApart(definition, `./${id}-rest.js`),
      liveApart,
      apart(shared, '../base.js'),
    ];
    const inRest = [apart(shared, '../base.js'), ...sources()];
    const both = inBoth(
      await modulesOf({ entryPoints: [definition] }, [...without, ...sources(short)]),
      await modulesOf(restEntry(definition, {}), inRest),
    );
    const inRestApart = [apart(both, `./${id}.js`), ...inRest];
    const rest = await bundleText(restEntry(definition, {}), inRestApart);
    const code = await bundleText({ entryPoints: [definition] }, [
      ...without,
      workedOut({ catalogue, unread: allColumns, texts }),
      ...sources(short),
    ]);
    const unread = unreadColumns([code, rest, liveText].join('\n'));
    const giveOut = givingOut(definition, both, namesAsked(rest, `./${id}.js`));
    return {
      ...options,
      entry: { [`calculators/${id}`]: definition },
      esbuildPlugins: [
        ...without,
        workedOut({ catalogue, unread, texts }),
        ...sources(short, giveOut),
      ],
      onSuccess: async () => {
        const bundle = readFileSync(join(outDir, 'calculators', `${id}.js`), 'utf8');
        const asked = textsIn(bundle, texts);
        await writeRest(definition, `calculators/${id}-rest.js`, asked, inRestApart);
      },
    };
  }

  async function writeRest(
    of: string,
    name: string,
    texts: Readonly<Record<number, string>>,
    plugins: readonly Plugin[],
  ): Promise<void> {
    writeFileSync(join(outDir, name), await bundleText(restEntry(of, texts), plugins));
  }
}

function restEntry(
  file: string,
  texts: Readonly<Record<number, string>>,
): Pick<BuildOptions, 'stdin'> {
  const contents = `${laterEntry(file)}\nexport const texts = ${JSON.stringify(texts)};`;
  return { stdin: { contents, resolveDir: '.' } };
}
