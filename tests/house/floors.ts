/** The folders of core, ground floor first: each imports only from those before it. */
export const floors: readonly string[] = [
  'basis',
  'load',
  'tempo',
  'equipment',
  'anatomy',
  'safety',
  'strength',
  'capacity',
  'warmup',
  'extension',
  'pairing',
  'exchange',
  'recovery',
  'progress',
  'session',
  'schema',
];
