import { type BuildOptions, type BuildResult, build, type Plugin } from 'esbuild';

type Entry = Pick<BuildOptions, 'entryPoints' | 'stdin'>;

/** A bundle as text, not made small. */
export async function bundleText(of: Entry, plugins: readonly Plugin[]): Promise<string> {
  return (await bundle(of, plugins)).outputFiles?.[0]?.text ?? '';
}

/** The source modules that a bundle holds, by path; lists of names, which only pass on, are none. */
export async function modulesOf(
  of: Entry,
  plugins: readonly Plugin[],
): Promise<ReadonlySet<string>> {
  const { metafile } = await bundle(of, plugins);
  const outputs = Object.values(metafile?.outputs ?? {});
  const parts = outputs.flatMap(({ inputs }) => Object.entries(inputs));
  return new Set(
    parts
      .filter(([path, { bytesInOutput }]) => bytesInOutput > 0 && isModule(path))
      .map(([path]) => new URL(path, `file://${process.cwd()}/`).pathname),
  );
}

function isModule(path: string): boolean {
  return /src\/.*\.tsx?$/.test(path) && !path.endsWith('/index.ts');
}

/** What two bundles both hold. */
export function inBoth(one: ReadonlySet<string>, other: ReadonlySet<string>): ReadonlySet<string> {
  return new Set([...one].filter((path) => other.has(path)));
}

function bundle(of: Entry, plugins: readonly Plugin[]): Promise<BuildResult> {
  return build({
    ...of,
    bundle: true,
    write: false,
    metafile: true,
    outdir: 'out',
    format: 'esm',
    target: 'es2023',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    external: ['preact', 'preact/*'],
    absWorkingDir: process.cwd(),
    plugins: [...plugins],
  });
}
