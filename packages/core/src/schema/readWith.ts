import * as z from 'zod/mini';
import { bad, good, type Outcome, type Problem } from '../basis/index.ts';
import { isTooDeep } from './isTooDeep.ts';

const TOO_DEEP: Problem = {
  code: 'schema.too-deep',
  path: [],
  message:
    'Lists and objects lie inside one another more than 100 deep here. At most 100 are read.',
};

/** Reads unknown input by a schema: the typed value, or every problem with its place. */
export function readWith<Schema extends z.core.$ZodType>(
  schema: Schema,
  input: unknown,
): Outcome<z.output<Schema>> {
  if (isTooDeep(input)) return bad(TOO_DEEP);
  const result = z.safeParse(schema, input);
  if (result.success) return good(result.data);
  return bad(...result.error.issues.map(problemOf));
}

function problemOf(issue: z.core.$ZodIssue): Problem {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  if (issue.code === 'unrecognized_keys') {
    const [unknown = ''] = issue.keys;
    return {
      code: 'schema.unknown-field',
      path: [...path, unknown],
      message: `There is no field "${unknown}" here. ${issue.message}`,
      params: { field: unknown },
    };
  }
  if (issue.code === 'custom' && typeof issue.params?.code === 'string') {
    const { code, params } = issue.params;
    return { code, path, message: issue.message, ...(params && { params }) };
  }
  return { code: `schema.${issue.code.replaceAll('_', '-')}`, path, message: issue.message };
}
