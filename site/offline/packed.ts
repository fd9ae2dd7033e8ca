/** Folders whose pages are many, alike and read by few: they come in one file after the first visit. */
export const packedFolders = ['developers/reference/', 'developers/schemas/'] as const;

/** The name of that file. */
export const packName = 'developers.pack';

/** The name of the worker's file. Its place decides what it may answer for: the whole site. */
export const workerName = 'worker.js';
