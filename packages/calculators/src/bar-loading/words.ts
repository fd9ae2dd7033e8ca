/** What the bar calculator says about its result. */
export const said = {
  loadTo: 'Load the bar to',
  exact: 'Exactly what was asked for: counted, not predicted.',
  allOn: (off: string) => `${off} what was asked for: everything that pairs up is on.`,
  between: (off: string) => `${off} what was asked for; no plates here make it exactly.`,
  formula: 'load = bar + 2 × collar + 2 × (plates on one side)',
  sum: (bar: string, collar: string, side: string, load: string) =>
    `${bar} + 2 × ${collar} + 2 × (${side || '0'}) = ${load}`,
  fewest: (pieces: number) =>
    `${pieces} pieces, the fewest that make this load; heavy ones inside.`,
  restsOn:
    'Whole numbers of 10 ng, so nothing is rounded before it is shown. Cast plates are often some percent off their mark; what is written on them is taken as true.',
  tips: {
    what: 'On hooks, a bar tips when one side is stripped.',
    why: 'With more on one side than the bar weighs, the far end can come up.',
    instead: 'Load and unload by turns, one piece a side at a time.',
  },
  warmUp: (load: string) => `Warm up to ${load}`,
  noLoad: 'No load',
  barIsHeavier: 'The bar is heavier',
  barWeighs: (load: string) =>
    `Empty, with its collars, it weighs ${load}. Take a lighter bar, dumbbells or a stack.`,
  moreThanHere: 'More than is here',
  heaviest: (message: string, load: string) =>
    `${message} The heaviest that these plates make is ${load}.`,
  eachSide: 'Each side, from the inside out',
  nothing: 'nothing',
  none: 'none',
  drawing: (plates: string) =>
    `One end of the bar, from the inside out: ${plates}. The other end is the same.`,
  near: 'What this bar can make near it',
  columns: { load: 'Load', total: 'Total', side: 'Each side' },
  lighter: 'Next lighter',
  this: 'This one',
  heavier: 'Next heavier',
  from: (load: string) => `From ${load} to this`,
  isOn: 'Nothing to change: it is on the bar.',
  takeOff: (plate: string, place: string) => `Take off ${plate}, ${place}`,
  putOn: (plate: string, place: string) => `Put on ${plate}, ${place}`,
} as const;
