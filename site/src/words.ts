/** Every word of the frame around the pages, of the start page, and of pages that are lists. */
export const words = {
  skip: 'Skip to the content',
  mainNavigation: 'Main',
  pages: {
    plan: 'Plan',
    floor: 'Floor',
    people: 'People',
    tools: 'Tools',
    guides: 'Guides',
    developers: 'Developers',
    search: 'Search',
  },
  otherLanguage: { name: 'Deutsch', tag: 'de', says: 'This page in German' },
  foot: {
    what: 'A library and a set of tools that compute strength sessions: loads, warm-ups, tempo and recovery. Figures about a person are estimates from published studies and from what you enter; they come with their range and their source.',
    evidence: 'How they agree with what was measured.',
    not: 'It is not medical advice and does not examine anyone. With pain, an injury, a heart or blood-pressure condition, pregnancy, or a child, ask a licensed practitioner first, and follow their limits and the rules of your gym before anything shown here.',
    stays: 'What you enter stays in this browser.',
    security: 'What is kept, and what a link shows.',
    licence: 'Open source, MIT licence.',
  },
  start: {
    description:
      'Works out a hard, slow, short strength session: the load that fails in your rep window, the warm-up, the seconds, from the plates you have.',
    title: 'The load that ends the set where you want it to end',
    says: 'Say in which reps a set should fail, and how slowly they go. Windlass finds the load among those your gym can make, the few warm-up sets before it, and what every set will probably give.',
    example: 'For example: a boathouse gym, a pull session, its first lift',
    plan: 'Plan a session',
    floor: 'Run this session set by set',
    load: 'Only the load',
    code: 'The same in TypeScript',
    made: 'This is the code that made the numbers above.',
    library: 'How to use the library',
  },
  example: {
    lift: (name: string, equipment: string, fewest: number, most: number, count: string) =>
      `${name}, ${equipment}. Failure wanted within ${fewest} to ${most} reps; each rep: ${count}.`,
    band: (low: string, high: string, inTen: string) =>
      `${low} to ${high} reps in ${inTen} of 10 tries.`,
    inside: (inHundred: string) => `Inside the window in ${inHundred} of 100.`,
    reasons: {
      'best-chance': 'No other load here does better.',
      'careful-first': 'A careful load, until more is known.',
      capped: 'Held down by a limit that somebody set.',
      fixed: 'Fixed by hand.',
    },
    known: (sets: number) =>
      `What is known: ${sets} logged ${sets === 1 ? 'set' : 'sets'} of this lift.`,
    caption: 'The sets of this lift, in order',
    columns: { load: 'Load', reps: 'Reps', what: 'What to do' },
    warmUp: (change: string, seconds: number) => `Warm-up: ${change}, then rest ${seconds}\u00a0s`,
    work: (loading: string) => `Work: ${loading}`,
    workRest: (loading: string, seconds: number) => `Work: ${loading}, then rest ${seconds}\u00a0s`,
  },
  tools: {
    title: 'Tools',
    description: (count: number) =>
      `${count} tools for strength sessions, each answering one question.`,
    says: 'One question each. The answers below are for the values a tool starts with; change them and the answer follows.',
  },
  planner: {
    title: 'Plan a session',
    description:
      'A whole session for one person and one gym: the load of each lift, how it is put together, the warm-up, the time it takes and what to look out for.',
  },
  floor: {
    title: 'On the floor',
    description:
      'Runs a planned session one set at a time: the load and how to make it, the count by tempo to hear and to feel, the rest, the log and the next load. Works without a signal.',
  },
  notFound: {
    title: 'No page here',
    description: 'There is no page at this address.',
    heading: 'There is no page at this address',
    says: 'It may have been renamed, or the link was cut. These are all one step away:',
  },
  tool: {
    rest: 'All inputs, the reasons and the code:',
  },
} as const;
