import * as z from 'zod/mini';
import { backupSchema } from './backupSchema.ts';
import { clientSchema } from './clientSchema.ts';
import { gymSchema } from './gymSchema.ts';
import { healthSchema } from './healthSchema.ts';
import { intentSchema } from './intentSchema.ts';
import { sessionFileSchema } from './sessionFileSchema.ts';

const schemas = {
  gym: gymSchema,
  health: healthSchema,
  client: clientSchema,
  intent: intentSchema,
  session: sessionFileSchema,
  backup: backupSchema,
} as const;

/** What the library reads from outside, by name. */
export type SchemaName = keyof typeof schemas;

/** Names of all schemas, parts before wholes. */
export const schemaNames = Object.keys(schemas) as readonly SchemaName[];

/**
 * The JSON Schema (draft 2020-12) of something that the library reads, for editors and for other
 * languages.
 *
 * It describes what may be written. Rules that span fields, such as a window that is upside down
 * or a tempo that adds up to nothing, are only known to the readers.
 *
 * @example
 * ```ts
 * import { jsonSchemaOf } from '@windlass/core/schema';
 * jsonSchemaOf('gym').required; // ['name', 'plates', 'equipment']
 * ```
 */
export function jsonSchemaOf(name: SchemaName): z.core.JSONSchema.JSONSchema {
  return z.toJSONSchema(schemas[name], { io: 'input' });
}
