/** The language of all words here, as `Intl` names it. A build in another language replaces it. */
export const language: string = 'en-GB';

/** A word that stands alone, such as a label, as it is written inside a sentence. */
export function inSentence(word: string): string {
  return language === 'de' ? word : word.charAt(0).toLowerCase() + word.slice(1);
}
