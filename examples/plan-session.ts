// Plans a session from a file and prints its sheet: npm run plan -- examples/boathouse/pull-day.json
import { parseArgs } from 'node:util';
import { planSession, printSheet, sessionSheet } from '@windlass/core/session';
import { readPlanFile } from './readPlanFile.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: 'boolean', default: false } },
  strict: false,
});
const [path] = positionals;

if (path === undefined) {
  console.error('Name a plan file: npm run plan -- examples/boathouse/pull-day.json [--json]');
  process.exit(2);
}

const question = readPlanFile(path);
if (!question.ok) {
  console.error(`${path} cannot be planned from:`);
  for (const { path: place, message } of question.problems) {
    console.error(`  ${place.join('.') || 'the file'}: ${message}`);
  }
  process.exit(2);
}

const sheet = sessionSheet(planSession(question.value));
console.log(values.json ? JSON.stringify(sheet, null, 2) : printSheet(sheet));
