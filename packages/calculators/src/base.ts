/**
 * What browsers fetch once for all calculators: the modules that several of their files need. The
 * build fills it.
 */
export {};
