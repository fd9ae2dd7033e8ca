import firstDay from '../../../../examples/boathouse/first-day.json';
import gym from '../../../../examples/boathouse/gym.json';
import legDay from '../../../../examples/boathouse/leg-day.json';
import pullDay from '../../../../examples/boathouse/pull-day.json';
import type { Json } from './tree.ts';

/** What the page can start from: sessions in the boathouse. */
export const examples = {
  'pull-day': { ...pullDay, gym },
  'leg-day': { ...legDay, gym },
  'first-day': { ...firstDay, gym },
} as const satisfies Record<string, Json>;

export type ExampleId = keyof typeof examples;

export const exampleIds = Object.keys(examples) as readonly ExampleId[];

export function isExample(id: string): id is ExampleId {
  return Object.hasOwn(examples, id);
}

/** What the page opens with. */
export const firstExample: Json = examples['pull-day'];
