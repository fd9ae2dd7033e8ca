import type {
  Counts,
  Handling,
  HandlingStep,
  Loading,
  PlateStack,
  ReachableLoad,
} from '../equipment/index.ts';
import { formatLoad, type Load, type LoadValue, loadFromValue, type Unit } from '../load/index.ts';

/** A load with its unit, for people: `40 kg`, `≈60.82 kg`. */
export function loadWords(load: Load, unit: Unit, locale: string): string {
  return formatLoad(load, { unit, locale });
}

/** A load as it is counted or read off: `40 kg in each hand`. */
export function countedWords(
  { shown, loading }: ReachableLoad,
  counts: Counts,
  unit: Unit,
  locale: string,
): string {
  const isOneHand = loading.kind === 'fixed' && loading.hands === 1 && counts === 'each-hand';
  const where = isOneHand ? 'in one hand' : countsWords[counts];
  return `${loadWords(shown, unit, locale)} ${where}`;
}

const countsWords: Readonly<Record<Counts, string>> = {
  total: 'in total, with the bar',
  'each-hand': 'in each hand',
  stack: 'on the stack',
  plates: 'of plates',
  added: 'added to the body',
};

/** How a load is put together, in words. */
export function loadingWords(loading: Loading, locale: string): string {
  switch (loading.kind) {
    case 'plates':
      return platesWords(loading.stacks, locale);
    case 'fixed': {
      const weight = given(loading.weight, locale);
      const one = loading.hands === 2 ? `a pair of ${weight}` : `one of ${weight}`;
      return withAddOns(one, loading.addOns, locale);
    }
    case 'pin':
      return withAddOns(`pin at ${given(loading.pin, locale)}`, loading.addOns, locale);
    case 'assistance':
      return loading.added.value === 0
        ? 'no help'
        : `help of ${given({ ...loading.added, value: -loading.added.value }, locale)}`;
  }
}

function platesWords(stacks: readonly PlateStack[], locale: string): string {
  const [first] = stacks;
  const loaded = stacks.filter(({ plates }) => plates.length > 0);
  if (!first || loaded.length === 0) return 'no plates';
  const same = stacks.every((stack) => namesOf(stack, locale) === namesOf(first, locale));
  if (same) {
    const where = stacks.length === 1 ? '' : 'each side ';
    return `${where}${namesOf(first, locale)}`;
  }
  return loaded.map((stack) => `${placeWords[stack.place]} ${namesOf(stack, locale)}`).join('; ');
}

function namesOf({ plates }: PlateStack, locale: string): string {
  return plates.map(({ weight }) => given(weight, locale)).join(' + ');
}

function withAddOns(base: string, addOns: readonly LoadValue[], locale: string): string {
  return [base, ...addOns.map((weight) => given(weight, locale))].join(' + ');
}

const placeWords: Readonly<Record<PlateStack['place'], string>> = {
  left: 'left',
  right: 'right',
  post: 'post',
  belt: 'belt',
  'first-handle-left': 'first handle, left',
  'first-handle-right': 'first handle, right',
  'second-handle-left': 'second handle, left',
  'second-handle-right': 'second handle, right',
};

/** What to do to get from one loading to the next, alike steps said once. */
export function handlingWords(handling: Handling, locale: string): string {
  const counted = new Map<string, Record<'left' | 'right' | 'all', number>>();
  for (const step of handling.steps) {
    const words = stepWords(step, locale);
    const times = counted.get(words) ?? { left: 0, right: 0, all: 0 };
    times.all += 1;
    if ('place' in step && (step.place === 'left' || step.place === 'right'))
      times[step.place] += 1;
    counted.set(words, times);
  }
  const said = [...counted].map(([words, { left, right, all }]) => {
    const isEven = left === right && left + right === all;
    const times = isEven ? left : all;
    return `${words}${times > 1 ? ` × ${times}` : ''}${isEven ? ' each side' : ''}`;
  });
  return said.length === 0 ? 'nothing to change' : said.join(', ');
}

function stepWords(step: HandlingStep, locale: string): string {
  switch (step.action) {
    case 'take-off':
      return `take off ${given(step.plate.weight, locale)}`;
    case 'put-on':
      return `put on ${given(step.plate.weight, locale)}`;
    case 'put-back':
      return `put back ${given(step.weight, locale)}`;
    case 'pick-up':
      return `take ${given(step.weight, locale)}`;
    case 'remove-add-on':
      return `remove ${given(step.weight, locale)}`;
    case 'fit-add-on':
      return `add ${given(step.weight, locale)}`;
    case 'move-pin':
      return `pin to ${given(step.to, locale)}`;
    case 'set-assistance':
      return `set the help to ${given({ ...step.added, value: -step.added.value }, locale)}`;
  }
}

function given(value: LoadValue, locale: string): string {
  return formatLoad(loadFromValue(value), { unit: value.unit, locale });
}
