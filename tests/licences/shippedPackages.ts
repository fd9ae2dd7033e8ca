import { existsSync, readdirSync, readFileSync, realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { root } from '../docs/workspaceFiles.ts';

/** A package of somebody else that reaches users: inside the site, or installed with ours. */
export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** As its manifest names it, an SPDX expression; empty where it names none. */
  readonly licence: string;
  readonly homepage: string;
  /** Its licence file as it is; empty where it has none. */
  readonly text: string;
}

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly homepage?: string;
  readonly repository?: string | { readonly url: string };
  readonly dependencies?: Readonly<Record<string, string>>;
}

/** Everything under the `dependencies` of what is released, near and far, by name. */
export function shippedPackages(): readonly ShippedPackage[] {
  const found = new Map<string, ShippedPackage>();
  const ours = ['packages/core', 'packages/calculators', 'site'];
  for (const folder of ours) collect(join(root, folder), found);
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

function collect(folder: string, found: Map<string, ShippedPackage>): void {
  for (const name of Object.keys(manifestOf(folder).dependencies ?? {})) {
    if (name.startsWith('@windlass/') || found.has(name)) continue;
    const home = homeOf(name, folder);
    const { version, license = '', repository = '', ...rest } = manifestOf(home);
    const source = typeof repository === 'string' ? repository : repository.url;
    const homepage = rest.homepage ?? source.replace(/^git\+|\.git$/g, '');
    found.set(name, { name, version, licence: license, homepage, text: licenceText(home) });
    collect(home, found);
  }
}

/** Where a package is that another one depends on, as Node looks for it: upwards, folder by folder. */
function homeOf(name: string, from: string): string {
  const home = join(from, 'node_modules', name);
  if (existsSync(home)) return realpathSync(home);
  if (dirname(from) === from) throw new Error(`${name} is not installed`);
  return homeOf(name, dirname(from));
}

function manifestOf(folder: string): Manifest {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
}

function licenceText(folder: string): string {
  const file = readdirSync(folder).find((name) => /^(?:licen[cs]e|ofl)/i.test(name));
  return file === undefined ? '' : readFileSync(join(folder, file), 'utf8').trim();
}
