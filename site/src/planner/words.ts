import { words as shared } from '@windlass/calculators/ui';
import type { MuscleGroup } from '@windlass/core/anatomy';
import type { Adviser } from '@windlass/core/safety';
import type { LeftOutLift } from '@windlass/core/session';

/** Every word of the planner that does not come with a plan. */
export const words = {
  title: 'Plan a session',
  notPlanned: (why: string) =>
    `This could not be worked out here (${why}). Load the page again; the link keeps what you entered.`,
  region: {
    person: 'Person',
    gym: 'Gym',
    health: 'Health',
  },
  starts: {
    label: 'Start from',
    names: { 'pull-day': 'Pull day', 'leg-day': 'Leg day', 'first-day': 'First day' },
    noScript: 'This is an example. Changing it needs JavaScript.',
  },
  actions: {
    undo: 'Undo',
    copyLink: 'Copy link',
    print: 'Print',
    save: 'Save plan',
    open: 'Open a file',
    saveGym: 'Save gym',
    today: 'Today',
    change: 'Change',
    health: 'Answers',
    gym: 'The gym',
    close: 'Close',
    floor: 'Run it on the floor',
    add: 'Add',
    says: 'A link holds the whole plan after the # sign, which browsers send to no server. Whoever gets the link can read it.',
  },
  notice: {
    damaged:
      'The link to this page is damaged: a part of it is missing or changed, so its plan cannot be read. An example stands here instead. Ask for the link again; going back in the browser brings this one back.',
    newer:
      'The link to this page was made by a newer Windlass and cannot be read by this one. An example stands here instead. Load the page again; going back in the browser brings the link back.',
    notJson: (name: string) =>
      `${name} is not a plan or gym file: it is not JSON. Nothing was changed.`,
    wrongFile: (name: string, first: string, count: number) =>
      `${name} was not opened: ${first}${count > 1 ? ` (and ${count - 1} more)` : ''} Nothing was changed.`,
    opened: (name: string, kept: readonly string[]) =>
      `${name} is open.${kept.length > 0 ? ` It only names its ${kept.join(' and ')}, so the one here was kept.` : ''}`,
    dismiss: 'Put this message away',
  },
  old: {
    mark: 'old',
    says: 'What is shown is from before the last change, which cannot be planned with:',
  },
  head: {
    minutes: 'min',
    about: 'about',
    at: (gym: string) => `at ${gym}`,
    parts: { change: 'setting up', warmUp: 'warm-up', work: 'work', rest: 'rest' },
    strip: (total: string, parts: string) =>
      `The session in time: about ${total} minutes. ${parts}.`,
    brief: (minutes: number) => `about ${minutes} min`,
    noCautions: 'nothing',
    cautions: (counts: string) => `Before loading: ${counts}`,
    count: {
      stop: (n: number) => `${n} ${n === 1 ? 'stop' : 'stops'}`,
      caution: (n: number) => `${n} ${n === 1 ? 'caution' : 'cautions'}`,
      note: (n: number) => `${n} ${n === 1 ? 'note' : 'notes'}`,
    },
    live: (minutes: number, lifts: readonly string[]) =>
      `About ${minutes} minutes. ${lifts.join('. ')}`,
    liveAsk: 'No session before somebody was asked.',
    within: (most: number, without: number) =>
      `Fitted into ${most} minutes; it would take ${without}. Left out for it:`,
    saves: (minutes: number) => `saves ${minutes} min`,
  },
  lift: {
    start: 'Start with',
    fail: (window: string) => `Fail within ${window} reps`,
    end: (window: string) => `End within ${window} reps`,
    warmUp: 'Warm-up',
    work: 'Work',
    try: 'Try',
    tries: (from: number, to: number) => `Tries ${from} to ${to}`,
    rest: (duration: string) => `rest ${duration}`,
    times: (reps: number) => `× ${reps}`,
    repsUnit: (reps: number) => (reps === 1 ? 'rep' : 'reps'),
    find: (window: string) => `To find: the load for ${window} reps`,
    eachSide: 'each side',
    bare: 'empty, without plates',
    thenOn: (loading: string) => `then on: ${loading}`,
    between: (low: number, high: number, ofTen: number) => `${low}–${high} in ${ofTen} of 10`,
    inside: (percent: number, window: string) => `${percent} % inside ${window}`,
    ruler: (says: string, window: string) => `Reps: ${says}; the window is ${window}.`,
    bar: (equipment: string, loading: string) => `${equipment}: ${loading}`,
    fixed: 'Fixed by hand',
    why: (load: string) => `Why ${load}`,
    written: { load: 'load', reps: 'reps', left: 'reps left' },
    leftOut: 'Left out',
    onTo: (time: string) => `${time}, then the next lift`,
    nextRound: (time: string) => `Rest ${time}, then the next round`,
    pastFailure: 'The last set goes on past the rep that fails, with the same load',
    stage: (words: string, count: string, seconds: string) =>
      `${words}: ${count === '' ? '' : `about ${count}, `}about ${seconds} s`,
    notFor: 'Not for everybody. It is not planned where:',
    instead: 'Instead, here and within the limits:',
    noLoad: 'No load yet',
    askFirst: 'No load before somebody has agreed.',
    none: 'Not planned yet: see what is marked below.',
    stopWith: (left: number) => `stop with ${left} left`,
    nextTry: 'heavier, by what was left',
    steps: 'Next load, at most',
    stepLeft: (from: number, to: number | undefined) =>
      to === undefined
        ? `${from} or more left`
        : from === to
          ? `${from} left`
          : `${from}–${to} left`,
    remove: (name: string) => `Remove ${name}`,
    up: (name: string) => `Do ${name} earlier`,
    down: (name: string) => `Do ${name} later`,
    add: 'Add a lift',
    number: (number: number) => `Lift ${number}`,
  },
  muscles: {
    title: 'Muscles',
    add: 'Choose lifts for muscles',
    remove: 'Remove the muscles',
    help: 'Up to twelve. A muscle that a lift above trains already gets none of its own.',
    keep: 'Keep these lifts and change them one by one',
    chosen: (count: number) => `${count} ${count === 1 ? 'lift' : 'lifts'} chosen`,
    none: 'No lift is chosen: the lifts above train these muscles already.',
    groups: {
      chest: 'Chest',
      shoulders: 'Shoulders',
      back: 'Back',
      arms: 'Arms',
      forearms: 'Forearms',
      trunk: 'Trunk',
      hips: 'Hips',
      thighs: 'Thighs',
      'lower-legs': 'Lower legs',
    } satisfies Record<MuscleGroup, string>,
  },
  leftOut: {
    'unknown-exercise': 'Choose an exercise from the list.',
    'unknown-variant': 'Choose one of its set-ups.',
    'unknown-equipment': 'Choose equipment that is in the gym, or add it there.',
    'wrong-equipment': 'Choose equipment that can load it, or another exercise.',
    'no-loads': 'Fill in what is missing, or choose other equipment.',
    'no-repetitions': 'Choose an exercise that is done in repetitions.',
    limits: 'What hurts and what a clinician has said is asked under health.',
    'no-load-for-window': 'The window, the tempo and the equipment are set beside it.',
    'no-time': 'The longest time for the session is asked beside the person.',
  } satisfies Record<LeftOutLift['reason'], string>,
  cautions: {
    title: 'Before loading',
    none: 'No caution follows from what was asked.',
    level: shared.cautions.level,
    why: 'Why',
    instead: 'Instead',
    ask: 'Ask',
    sources: 'Sources',
  },
  stop: { title: 'Stop at any of these' },
  askFirst: {
    title: 'Ask first',
    says: 'No session is planned before somebody was asked.',
    whom: 'Whom to ask',
  },
  tooShort: {
    title: 'Too little time',
    lift: 'No load: the time is too short.',
  },
  advisers: shared.cautions.advisers as Readonly<Record<Adviser, string>>,
  code: {
    title: 'The same in TypeScript',
    copy: 'Copy the code',
  },
  duration: (minutes: number, seconds: number) =>
    [minutes > 0 ? `${minutes} min` : '', seconds > 0 || minutes === 0 ? `${seconds} s` : '']
      .filter((part) => part !== '')
      .join(' '),
} as const;
