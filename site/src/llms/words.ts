/** What the text for language models says around its lists. */
export const words = {
  title: 'Windlass',
  says: 'A typed TypeScript library of resistance-training computing, and a static site of tools built on it, for strength coaches, physiotherapists, lifters and developers: the load that fails in a rep window at a tempo, warm-ups, what a gym can load, sets past failure, pairs, exchanges, recovery, the calendar, logs and the next load.',
  rules: [
    'Install `@windlass/core` (no dependency but a validator in its schemas) or `@windlass/calculators`. Import from the entry that answers the question: `@windlass/core/load`, not a file inside it. Everything is an ES module with types.',
    'Functions are pure: the date and the seed are arguments, nothing is written to, nothing is fetched.',
    'A load is the branded integer `Load`: make it with `kg(62.5)` or `lb(45)`, compare with `<` and `===`, read what people write with `parseLoad`. Never compute with kilograms as floats.',
    'What comes from people goes through a reader (`parseLoad`, `parseTempo`, `readSessionFile`, `readLogCsv`): the answer is `{ ok: true, value }` or `{ ok: false, problems }`, each problem with a sentence that says what would be right.',
    'What can have no answer returns an outcome told apart by `kind`. A `RangeError` is a programmer’s mistake.',
    'A figure about a person is a band of low, likely and high with its level, and says what it rests on. Show the whole band, never the likely figure alone.',
    'Cautions come as data with a reason and a source. Pass them on; they defer to licensed practice and local rules. Never tell anyone that an exercise or a load is free of risk.',
    'Each tool can be linked with its values: the name and the text of a field in the query of its address.',
    'To put a tool into any page, copy the folder `dist/standalone` of `@windlass/calculators` to the server, load `windlass.js` as a module, and write `<windlass-calculator calculator="bar-loading" target="62.5kg">`: a field is an attribute, and each answer is a `windlass-result` event with plain data in `detail`.',
  ],
  parts: {
    rules: 'Rules',
    entries: 'Entries of the library',
    manual: 'For developers',
    tools: 'Tools',
    guides: 'Guides',
    schemas: 'JSON Schemas',
    more: 'Optional',
  },
  planner: { name: 'Plan a session', says: 'the whole session for one person and one gym' },
  full: { name: 'The whole reference', says: 'every exported name with its comment, in one file' },
  fullSays: 'The reference of every entry, written from the doc comments of the code.',
} as const;
