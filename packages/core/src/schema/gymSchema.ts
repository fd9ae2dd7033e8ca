import * as z from 'zod/mini';
import { fullGym } from '../exchange/index.ts';
import { decimalNumber, fields, id, list, oneOf, text, wholeNumber } from './field.ts';
import { loadSchema } from './loadSchema.ts';

const pieces = wholeNumber('the number of pieces', 0, 1000);
const millimetres = (what: string) => z.exactOptional(decimalNumber(what, 0, 5000, 'mm'));
const loadOf = (what: string) => loadSchema(what);

const pieceStock = fields('a weight in stock', {
  weight: loadOf('the weight of one piece'),
  pieces,
});

const plateStock = fields('a plate', {
  weight: loadOf('the weight of one plate'),
  pieces,
  thicknessMm: millimetres('the thickness of the plate'),
  diameterMm: millimetres('the diameter of the plate'),
});
const plates = list('the plates', plateStock, 0, 40);

const item = { id: id('the id of the equipment'), name: text('the name of the equipment', 80) };
const plateLoaded = {
  ...item,
  plates: z.exactOptional(plates),
  sleeveMm: millimetres('the free length of one sleeve'),
};

const barbell = fields('a barbell', {
  kind: z.literal('barbell'),
  ...plateLoaded,
  bar: loadOf('the weight of the bar'),
  collar: z.exactOptional(loadOf('the weight of one collar')),
});

const onePost = fields('a one-post loading', {
  kind: z.literal('one-post'),
  ...plateLoaded,
  form: oneOf('the form of the post', ['landmine', 'loading-pin', 'belt']),
  base: loadOf('what moves with no plate on'),
});

const fixedWeights = fields('fixed weights', {
  kind: z.literal('fixed'),
  ...item,
  form: oneOf('the form of the weights', ['dumbbell', 'kettlebell', 'barbell']),
  weights: list('the weights', pieceStock, 1, 200),
  addOns: z.exactOptional(list('the add-on weights', pieceStock, 0, 20)),
});

const handles = fields('adjustable handles', {
  kind: z.literal('handles'),
  ...plateLoaded,
  handle: loadOf('the weight of one handle with its collars'),
  handles: z.union([z.literal(1), z.literal(2)], {
    error: 'Give the number of handles as 1 or 2.',
  }),
});

const stack = fields('a selector stack', {
  kind: z.literal('stack'),
  ...item,
  first: loadOf('the weight of the first plate of the stack'),
  rest: list('the plates below the first', pieceStock, 0, 100),
  addOns: z.exactOptional(list('the add-on weights', pieceStock, 0, 20)),
  pulleyRatio: decimalNumber('the pulley ratio (1 for 1:1, 2 for 2:1)', 0.1, 10),
});

const machine = fields('a plate-loaded machine', {
  kind: z.literal('machine'),
  ...plateLoaded,
  posts: z.union([z.literal(1), z.literal(2)], { error: 'Give the number of posts as 1 or 2.' }),
  start: z.union([z.literal('unknown'), loadOf('the starting resistance')], {
    error:
      'Give the starting resistance with its unit, such as "35 kg", or "unknown" when nobody has weighed it.',
  }),
  leverRatio: z.exactOptional(decimalNumber('the lever ratio', 0.05, 10)),
  railDegrees: z.exactOptional(
    decimalNumber('the angle of the rail against the floor', 1, 90, 'degrees'),
  ),
});

const body = fields('a place for body-weight work', {
  kind: z.literal('body'),
  ...item,
  belt: z.exactOptional(
    fields('a belt', {
      base: z.exactOptional(loadOf('the weight of the empty belt')),
      plates: z.exactOptional(plates),
      pieces: z.exactOptional(list('the whole weights for the belt', pieceStock, 0, 40)),
    }),
  ),
  assistance: z.exactOptional(list('the amounts of help', loadOf('an amount of help'), 0, 100)),
});

const band = fields('an elastic band', { kind: z.literal('band'), ...item });

/** One piece of equipment, told apart by its `kind`. */
export const equipmentSchema = z.discriminatedUnion(
  'kind',
  [barbell, onePost, fixedWeights, handles, stack, machine, body, band],
  {
    error:
      'Give the kind of equipment as one of: barbell, one-post, fixed, handles, stack, machine, body, band.',
  },
);

const [firstStation = 'cable', ...otherStations] = fullGym.stations;
const station = fields('a station', {
  station: oneOf('the station', [firstStation, ...otherStations]),
  equipment: z.exactOptional(id('the id of the equipment that belongs to it')),
});

/** A gym: the plates its bars share, its equipment, and the stations that it names. */
export const gymSchema = fields('the gym', {
  name: text('the name of the gym', 80),
  plates,
  equipment: list('the equipment', equipmentSchema, 1, 200),
  stations: z.exactOptional(list('the stations', station, 0, 100)),
});
