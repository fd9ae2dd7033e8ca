/** A file as the worker asks for it: its address and a mark that changes with its content. */
export interface StoredFile {
  readonly path: string;
  readonly revision: string;
}

/** The pages in another language, in a folder of their own. */
export interface StoredLanguage {
  readonly folder: string;
  readonly files: readonly StoredFile[];
}

/** What one version of the site keeps on a device. */
export interface Stored {
  /** Changes when anything that is kept does. */
  readonly version: string;
  /** The folder of the site, with its slashes. */
  readonly base: string;
  /** Kept with the first visit. */
  readonly first: readonly StoredFile[];
  /** Kept from the first visit to a page in that language on. */
  readonly languages: readonly StoredLanguage[];
  /** Many pages in one file, fetched when the first visit is over. */
  readonly pack: StoredFile;
  /** The addresses of pages that come in the pack begin with one of these. */
  readonly packed: readonly string[];
}

/** Whether the name of a file changes with its content, so that it never has to be asked for again. */
export function isNamedByContent(path: string): boolean {
  return path.includes('/assets/');
}
