import { isNamedByContent } from './Stored.ts';

/**
 * How long a browser may keep a file without asking again: for good where the name changes with
 * the content, not at all elsewhere. The worker of the site keeps the rest and asks for changes.
 */
export function cacheControl(path: string): string {
  return isNamedByContent(path) ? 'public, max-age=31536000, immutable' : 'no-cache';
}
