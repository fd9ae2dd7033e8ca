import { isRecord, type Json, listAt, setAt, textAt } from './tree.ts';

const SETS = ['client', 'sets'];

/** Places of the known sets of an exercise on a piece of equipment. */
export function setsOf(draft: Json, exercise: string, equipment: string): readonly number[] {
  return listAt(draft, SETS).flatMap((_, place) =>
    textAt(draft, [...SETS, place, 'exercise']) === exercise &&
    textAt(draft, [...SETS, place, 'equipment']) === equipment
      ? [place]
      : [],
  );
}

/** Places of the known sets that belong to none of the session's lifts. */
export function setsOfOtherLifts(draft: Json): readonly number[] {
  const own = new Set(
    listAt(draft, ['intent', 'lifts']).flatMap((_, lift) => {
      const at = (field: string) => textAt(draft, ['intent', 'lifts', lift, field]);
      return setsOf(draft, at('exercise'), at('equipment'));
    }),
  );
  return listAt(draft, SETS).flatMap((_, place) => (own.has(place) ? [] : [place]));
}

/** The draft with one more known set of a lift: a copy of its last one, or one to fill in. */
export function addSet(draft: Json, exercise: string, equipment: string): Json {
  const sets = listAt(draft, SETS);
  const last = sets[setsOf(draft, exercise, equipment).at(-1) ?? -1];
  const fresh = {
    date: textAt(draft, ['intent', 'date']),
    exercise,
    equipment,
    load: ` ${textAt(draft, ['intent', 'unit'])}`,
    reps: '',
    end: 'failure',
  };
  return setAt(draft, [...SETS, sets.length], isRecord(last) ? last : fresh);
}
