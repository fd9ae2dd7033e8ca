const WORD = /[\p{L}\p{N}]+/gu;
const PART = /\p{Lu}+(?!\p{Ll})|\p{Lu}?[\p{Ll}]+|\p{N}+/gu;

/**
 * The words of a text; of a name such as `planSession` its parts, too. Taken apart in the same way
 * when the index is made and when it is asked.
 */
export function termsOf(text: string): string[] {
  return wordsOf(text).flatMap((word) => {
    const parts = word.match(PART) ?? [];
    return parts.length > 1 && /\p{Ll}\p{Lu}/u.test(word) ? [word, ...parts] : [word];
  });
}

/** The words of a text as they stand there. */
export function wordsOf(text: string): string[] {
  return text.match(WORD) ?? [];
}
