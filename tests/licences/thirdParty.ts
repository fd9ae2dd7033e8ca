import type { ShippedPackage } from './shippedPackages.ts';

/** The page that goes with every copy: a list, then each licence in full, as they ask for. */
export function thirdParty(packages: readonly ShippedPackage[]): string {
  const rows = packages.map(
    ({ name, version, licence, homepage }) => `| ${name} | ${version} | ${licence} | ${homepage} |`,
  );
  const texts = packages.map(
    ({ name, text }) => `## ${name}\n\n\`\`\`text\n${text.replace(/\r\n/g, '\n')}\n\`\`\``,
  );
  return `${[
    '# Work of others in Windlass',
    'Packages that are installed with ours or stand inside the site, and their licences. `npm run licences` writes this file.',
    ['| package | version | licence | home |', '|---|---|---|---|', ...rows].join('\n'),
    ...texts,
  ].join('\n\n')}\n`;
}
