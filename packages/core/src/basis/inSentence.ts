import { language } from './language.ts';
import { standsWithoutNoun } from './standsWithoutNoun.ts';

/**
 * A name that stands alone, such as that of an exercise, as it is written inside a sentence: in
 * English with a small first letter; in German, where nouns keep theirs, only if it begins with
 * another word.
 *
 * @example
 * ```ts
 * import { inSentence } from '@windlass/core/basis';
 * inSentence('Seated cable row'); // 'seated cable row'
 * ```
 */
export function inSentence(name: string): string {
  const isSmall = language.startsWith('en') || standsWithoutNoun(name);
  return isSmall ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}
