/**
 * The language of all words of the library, as `Intl` names it; numbers in words follow it, too.
 * A build in another language replaces it.
 *
 * @example
 * ```ts
 * import { language } from '@windlass/core/basis';
 * language; // 'en-GB'
 * ```
 */
export const language: string = 'en-GB';
