// npm run language -- de [folder]: the texts that a language lacks, as JSON to fill in.
import { join } from 'node:path';
import { textsToTranslate } from '../packages/calculators/languages/missing.ts';
import { languages, readCatalogue } from '../packages/calculators/languages/readCatalogue.ts';
import { CommandError, main, root } from './workspace.mjs';

const [language, folder = ''] = process.argv.slice(2);

await main(() => {
  if (!languages.includes(language)) {
    throw new CommandError(`Name a language: ${languages.join(', ')}.`);
  }
  const catalogue = readCatalogue(join(root, 'packages'), language);
  const missing = [...textsToTranslate(root)].filter(
    ([text, places]) => !catalogue.has(text) && places[0].startsWith(folder),
  );
  console.log(JSON.stringify(Object.fromEntries(missing.map(([text]) => [text, ''])), null, 1));
});
