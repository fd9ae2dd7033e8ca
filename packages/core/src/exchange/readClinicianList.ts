import type { Exercise, Movement, PositionId } from '../anatomy/index.ts';
import { clinicianTerms } from './clinicianTerms.ts';
import type { ClinicianTerm, ExchangeReason } from './Exchange.ts';

/** A clinician's list, read as a filter. */
export interface ClinicianFilter {
  /** Words that nothing here answers to. They have to be settled before anything is offered. */
  readonly unread: readonly string[];
  /** Positions that two or more of the listed lifts share. */
  readonly positions: readonly PositionId[];
  /** The movement that each entry names in the first place. */
  readonly named: readonly Movement[];
  /** Why an exercise is left out, or nothing. */
  readonly reasonAgainst: (exercise: Exercise) => ExchangeReason | undefined;
}

/** Loads on the spine belong together: a list that names two of them is about all. */
const SPINE_LOADS: readonly PositionId[] = [
  'spine-upright-load',
  'spine-seated-load',
  'spine-unsupported-hinge',
  'spine-loaded-bend',
  'spine-loaded-twist',
];

/**
 * What a clinician's "not allowed" list leaves out: the named lifts with their families, exercises
 * whose own name says the same, and, when two or more entries load the same position, everything
 * that loads it, whatever it is called.
 *
 * @param list the clinician's words, in any case, singular or plural; empty filters nothing.
 * @param exercises where names are looked up.
 */
export function readClinicianList(
  list: readonly string[],
  exercises: readonly Exercise[],
): ClinicianFilter {
  const entries = list.map((words) => {
    const said = normal(words);
    const term = clinicianTerms.find(({ says }) => says.includes(said));
    return { words, term, ids: namedLike(said, exercises) };
  });
  const terms = entries.flatMap(({ term }) => term ?? []);
  const positions = sharedPositions(terms);
  return {
    unread: entries.filter(({ term, ids }) => !term && !ids.length).map(({ words }) => words),
    positions,
    named: terms.flatMap((term) => term.movements?.slice(0, 1) ?? []),
    reasonAgainst: (exercise) => {
      const entry = entries.find(
        ({ term, ids }) => ids.includes(exercise.id) || (term && covers(term, exercise)),
      );
      if (entry) return listed(exercise, entry.words, positions);
      const shared = exercise.positions.find((position) => positions.includes(position));
      if (!shared) return undefined;
      const words = `It loads the body as several entries on the clinician's list do (${shared.replaceAll('-', ' ')}).`;
      return { code: 'like-clinicians-list', words };
    },
  };
}

function listed(
  exercise: Exercise,
  words: string,
  positions: readonly PositionId[],
): ExchangeReason {
  const alike = exercise.positions.some((position) => positions.includes(position));
  if (alike || !positions.length) {
    return { code: 'on-clinicians-list', words: `The clinician's list says "${words}".` };
  }
  const conflict = `The clinician's list says "${words}". By its description here it does not load the body as the rest of the list does; the list counts. Ask if it was meant.`;
  return { code: 'on-clinicians-list-conflict', words: conflict };
}

function covers(term: ClinicianTerm, exercise: Exercise): boolean {
  if (term.ids?.includes(exercise.id)) return true;
  if (!term.movements?.includes(exercise.movement)) return false;
  return term.position === undefined || exercise.positions.includes(term.position);
}

function sharedPositions(terms: readonly ClinicianTerm[]): readonly PositionId[] {
  const about = [...new Set(terms)].flatMap((term) => term.about);
  const shared = new Set(about.filter((position, at) => about.indexOf(position) < at));
  const spine = [...shared].some((position) => SPINE_LOADS.includes(position));
  return [...new Set([...shared, ...(spine ? SPINE_LOADS : [])])];
}

/** Small letters, singular, single spaces. */
function normal(words: string): string {
  const plain = words.trim().toLowerCase().replace(/\s+/g, ' ');
  return plain
    .replace(/sses$/, 'ss')
    .replace(/ies$/, 'y')
    .replace(/(?<!s)s$/, '');
}

function namedLike(said: string, exercises: readonly Exercise[]): readonly string[] {
  const plain = (text: string) => normal(text).replaceAll('-', ' ');
  return exercises
    .filter(({ id, name }) => plain(id) === plain(said) || plain(name) === plain(said))
    .map(({ id }) => id);
}
