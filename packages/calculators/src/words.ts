import { inSentence } from '@windlass/core/basis';
/** Every word of the package that is not one calculator's own. Another language is another such object. */
export const words = {
  problems: {
    range: (min: number, max: number, unit: string) =>
      `from ${plain(min)} to ${plain(max)}${unit === '' ? '' : ` ${unit}`}`,
    loadRange: (minKg: number, maxKg: number) => `from ${plain(minKg)} to ${plain(maxKg)} kg`,
    number: (range: string) =>
      `Write one number ${range}, for example with a decimal comma or point.`,
    whole: (range: string) => `Write a whole number ${range}.`,
    outside: (range: string) => `This takes a value ${range}.`,
    window: (range: string) =>
      `Write the lowest and the highest count, both ${range}, such as 6-10.`,
    upsideDown: (low: number, high: number) =>
      `The first count must not be above the second. Did you mean ${high}-${low}?`,
    choice: (ids: readonly string[]) =>
      ids.length <= 12
        ? `Choose one of: ${ids.join(', ')}.`
        : `Choose one of the list: ${ids.slice(0, 3).join(', ')} and ${ids.length - 3} more.`,
    dateRange: (min: string, max: string) => `from ${min} to ${max}`,
    date: (range: string) => `Write a date as year-month-day, ${range}.`,
    time: 'Write a time from 00:00 to 23:59.',
    long: (maxLength: number) => `Write at most ${maxLength} characters.`,
    empty: 'This one is needed. Write a value.',
    cells: (expected: number) => `This row is damaged: it needs ${expected} values.`,
    rows: (min: number, max: number, name: string) =>
      min === 0
        ? `At most ${max} rows of this kind (${inSentence(name)}) fit here.`
        : `Give at least ${min} and at most ${max} (${inSentence(name)}).`,
    inRow: (name: string, row: number, message: string) => `${name} ${row}: ${message}`,
  },
  result: {
    none: 'No answer for this input',
    old: 'old',
    oldMeans: ': from the last complete input',
    noView: 'No picture for this input.',
    band: (low: string, high: string, unit: string, inTen: string) =>
      `${low} to ${high}${unit === '' ? '' : ` ${unit}`} in ${inTen} of 10.`,
  },
  form: {
    region: 'Inputs',
    kg: 'kg',
    lb: 'lb',
    less: (label: string) => `${label}: one step less`,
    more: (label: string) => `${label}: one step more`,
    unitOf: (label: string) => `${label}: unit`,
    lowest: 'lowest',
    highest: 'highest',
    windowEnd: (label: string, end: string) => `${label}: ${end}`,
    cell: (row: string, number: number, column: string) => `${row} ${number}: ${column}`,
    row: (row: string, number: number) => `${row} ${number}`,
    add: (row: string) => `Add a ${inSentence(row)}`,
    remove: (row: string, number: number) => `Remove ${inSentence(row)} ${number}`,
    part: (label: string, phase: string) => `${label}: ${phase}`,
    noneFound: 'Nothing in the list has these words.',
  },
  more: {
    next: 'What next',
    notFetched:
      'The reasons, cautions and sources could not be fetched. See to the connection; the next change tries again.',
  },
  phases: {
    lower: 'lower',
    'pause-after-lower': 'pause, low',
    lift: 'lift',
    'pause-after-lift': 'pause, high',
  },
  count: {
    perRep: 'a rep',
  },
  ramp: {
    times: (reps: number) => `× ${reps}`,
    work: 'work',
  },
  distance: {
    above: (load: string) => `${load} above`,
    below: (load: string) => `${load} below`,
  },
  loading: {
    nothingAdded: 'nothing added',
    nothing: 'nothing',
    emptyBar: 'the empty bar',
    side: (plates: string) => `each side ${plates}`,
    end: (plates: string) => `each end ${plates}`,
    post: (plates: string) => `on the post ${plates}`,
    belt: (plates: string) => `on the belt ${plates}`,
    pair: (weight: string) => `the pair of ${weight}`,
    one: (weight: string) => `the one of ${weight}`,
    pin: (number: string, onTop: readonly string[]) =>
      `pin at ${number}${onTop.map((weight) => ` + ${weight} on top`).join('')}`,
    help: (weight: string) => `${weight} of help`,
  },
  change: {
    nothing: 'nothing to change',
    all: (steps: readonly string[], isSided: boolean) =>
      `${steps.join(', ')}${isSided ? ', each side' : ''}`,
    takeOff: (plate: string) => `take off ${plate}`,
    putOn: (plate: string) => `put on ${plate}`,
    putBack: (weight: string) => `put back ${weight}`,
    pickUp: (weight: string) => `take ${weight}`,
    removeAddOn: (weight: string) => `take ${weight} off the top`,
    fitAddOn: (weight: string) => `lay ${weight} on top`,
    movePin: (number: string) => `pin to ${number}`,
    setHelp: (weight: string) => `set help to ${weight}`,
  },
  time: {
    seconds: (figure: string) => `${figure} s`,
    minutes: (figure: string) => `${figure} min`,
  },
  dates: {
    weekdays: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
    months: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
    day: (weekday: string, day: number, month: string) => `${weekday} ${day} ${month}`,
    dayMonth: (day: number, month: string) => `${day} ${month}`,
    short: (weekday: string, day: number) => `${weekday} ${day}`,
    at: (day: string, time: string) => `${day}, ${time}`,
  },
  chance: {
    percent: (figure: string) => `${figure} %`,
  },
  bar: {
    otherSide: 'the other side is the same',
  },
  cautions: {
    level: { note: 'Note', caution: 'Caution', stop: 'Stop' },
    above: 'Rests on a source named above.',
    ask: (advisers: readonly string[]) => `Ask ${advisers.join(', or ')}.`,
    advisers: {
      'emergency-services': 'the emergency services',
      physician: 'a physician',
      physiotherapist: 'a physiotherapist',
      'obstetric-care': 'whoever looks after the pregnancy',
      'qualified-adult': 'a qualified adult who is there',
      coach: 'a coach',
    },
  },
} as const;

function plain(value: number): string {
  return Number.isInteger(value) ? String(value) : String(Math.round(value * 1000) / 1000);
}
