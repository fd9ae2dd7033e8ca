import type { Calculator, Field, ScalarField, Texts } from '@windlass/calculators';
import { treacherousNames } from './nasty.ts';
import type { Random } from './Random.ts';
import { anyText, damaged, dateText, loadText, numberText, several, tempoText } from './texts.ts';

/** Texts of a calculator: defaults, values in range, and whatever else people and links write. */
export function fieldTexts({ fields, defaults }: Calculator, random: Random): Texts {
  const strange = random.pick([3, 20, 1000]);
  const texts = Object.entries(fields).flatMap(([name, field]) =>
    random.oneIn(3) ? [] : [[name, fieldText(field, defaults[name] ?? '', strange, random)]],
  );
  const extra = random.oneIn(10) ? [[random.pick(treacherousNames), anyText(random)]] : [];
  return Object.fromEntries([...texts, ...extra]) as Texts;
}

/** A text of which one in `strange` is not in range. */
function fieldText(field: Field, text: string, strange: number, random: Random): string {
  if (random.oneIn(strange)) return random.pick([anyText, (r: Random) => damaged(text, r)])(random);
  if (field.kind === 'many') {
    return field.options
      .map(({ id }) => id)
      .filter(() => random.oneIn(3))
      .join(',');
  }
  if (field.kind !== 'rows') return scalarText(field, random);
  const columns = Object.values(field.columns);
  const row = () => columns.map((column) => scalarText(column, random)).join('_');
  return random.oneIn(3) ? text : several(random, field.maxRows + 1, row).join('~');
}

function scalarText(field: ScalarField, random: Random): string {
  if (field.optional && random.oneIn(3)) return '';
  switch (field.kind) {
    case 'number': {
      const span = field.max - field.min;
      const value = random.pick([field.min, field.max, field.min + random.below(span + 1)]);
      return field.step === 1 ? String(value) : String(value + random.below(100) / 100);
    }
    case 'load':
      return random.oneIn(4)
        ? loadText(random)
        : `${random.pick([field.minKg, field.maxKg, field.minKg + random.below(1000) / 8])}kg`;
    case 'tempo':
      return random.pick([tempoText(random), '3-0-1-0', '10-0-10-0', '30X0']);
    case 'window': {
      const low = field.min + random.below(field.max - field.min + 1);
      return `${low}-${low + random.below(8)}`;
    }
    case 'date':
      return random.pick([field.min, field.max, '2027-03-15', dateText(random)]);
    case 'time':
      return random.pick(['00:00', '23:59', '18.30', `${random.below(30)}:${random.below(70)}`]);
    case 'choice':
      return random.pick(field.options).id;
    case 'text':
      return random.pick([anyText(random), numberText(random), 'squats, deadlift']);
  }
}
