import { calculators, jsonSchemaOf as toolSchemaOf } from '@windlass/calculators';
import { jsonSchemaOf, type SchemaName, schemaNames } from '@windlass/core/schema';

/** A JSON Schema that this site serves. */
export interface ServedSchema {
  /** Its address under `/developers/schemas/`, without the ending. */
  readonly path: string;
  readonly describes: string;
  readonly schema: unknown;
}

const describes: Readonly<Record<SchemaName, string>> = {
  gym: 'A gym: its plates, and its bars, dumbbells, stacks and machines.',
  health: 'What is known about a person’s health, for cautions and limits.',
  client: 'A person: experience, health, and the log of sets done.',
  intent: 'What a coach wants of a session: lifts, rep windows, tempos, rests.',
  session: 'A whole file to plan from: a client, a gym and an intent.',
  backup: 'A file with everything kept in the browser: clients, gyms, sessions done and running.',
};

/** What the library reads, by name. */
export const coreSchemas: readonly ServedSchema[] = schemaNames.map((name) => ({
  path: name,
  describes: describes[name],
  schema: jsonSchemaOf(name),
}));

/** The input of each tool. */
export const toolSchemas: readonly ServedSchema[] = calculators.map((calculator) => ({
  path: `tools/${calculator.id}`,
  describes: calculator.question,
  schema: toolSchemaOf(calculator),
}));
