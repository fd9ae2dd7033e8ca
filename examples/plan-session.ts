// Plans a session from a file and prints its sheet: npm run plan -- examples/boathouse/pull-day.json
// With --minutes 20 it takes no longer than that; with --json the sheet is for programs.
import { parseArgs } from 'node:util';
import { planSession, printSheet, sessionSheet } from '@windlass/core/session';
import { readPlanFile } from './readPlanFile.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: 'boolean', default: false }, minutes: { type: 'string' } },
  strict: false,
});
const [path] = positionals;

if (path === undefined) {
  console.error(
    'Name a plan file: npm run plan -- examples/boathouse/pull-day.json [--minutes 20] [--json]',
  );
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

const minutes = values.minutes === undefined ? undefined : Number(values.minutes);
if (minutes !== undefined && !(minutes >= 1 && minutes <= 600)) {
  console.error('Give the minutes as a number from 1 to 600: --minutes 20');
  process.exit(2);
}

const { intent, ...rest } = question.value;
const wanted = { ...intent, ...(minutes !== undefined && { minutesAtMost: minutes }) };
const sheet = sessionSheet(planSession({ ...rest, intent: wanted }));
console.log(values.json ? JSON.stringify(sheet, null, 2) : printSheet(sheet));
