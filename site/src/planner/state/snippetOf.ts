import { fileOf } from './fileOf.ts';
import type { Json } from './tree.ts';

/** TypeScript that reads the same plan file and prints the same sheet. */
export function snippetOf(draft: Json): string {
  const file = JSON.stringify(fileOf(draft), null, 2).replaceAll(/"(\w+)":/g, '$1:');
  return `import { readSessionFile } from '@windlass/core/schema';
import { planSession, printSheet, sessionSheet } from '@windlass/core/session';

const file = readSessionFile(${file});

console.log(
  file.ok
    ? printSheet(sessionSheet(planSession(file.value)))
    : file.problems.map(({ path, message }) => \`\${path.join('.')}: \${message}\`).join('\\n'),
);
`;
}
