export { jsonSchemaOf, type SchemaName, schemaNames } from './jsonSchemaOf.ts';
export { readClient } from './readClient.ts';
export { readGym } from './readGym.ts';
export { readHealth } from './readHealth.ts';
export { readIntent } from './readIntent.ts';
export { readSessionFile } from './readSessionFile.ts';
