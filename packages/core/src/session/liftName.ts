import type { Exercise, Variant } from '../anatomy/index.ts';
import { inSentence } from '../basis/index.ts';

/** An exercise with its set-up, where it is not the usual one: `Cable pulldown, neutral grip`. */
export function liftName(
  { name }: Pick<Exercise, 'name'>,
  setUp: Pick<Variant, 'name'> | undefined,
): string {
  return setUp ? `${name}, ${inSentence(setUp.name)}` : name;
}
