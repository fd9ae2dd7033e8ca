import { describe, expect, it } from 'vitest';
import type { Handling, HandlingStep, Loading, PlateStack } from '../equipment/index.ts';
import { kg } from '../load/index.ts';
import { countedWords, handlingWords, loadingWords } from './loadingWords.ts';

const kilos = (value: number) => ({ value, unit: 'kg' }) as const;
const plate = (value: number) => ({ weight: kilos(value) });
/** Numbers and units stand together by blanks that do not break. */
const plain = (words: string) => words.replaceAll(/\s/g, ' ');
const loading = (what: Loading) => plain(loadingWords(what, 'en'));
const stacks = (...list: readonly PlateStack[]) =>
  loading({ kind: 'plates', stacks: list, pieces: 0 });

describe('loadingWords', () => {
  it('says the plates of both sides once where they are alike', () => {
    const plates = [plate(10), plate(2.5)];
    expect(
      stacks({ place: 'left', plates }, { place: 'right', plates: [plate(10), plate(2.5)] }),
    ).toBe('each side 10 kg + 2.5 kg');
    expect(stacks({ place: 'post', plates })).toBe('10 kg + 2.5 kg');
    expect(stacks({ place: 'left', plates }, { place: 'right', plates: [plate(10)] })).toBe(
      'left 10 kg + 2.5 kg; right 10 kg',
    );
    expect(stacks({ place: 'left', plates: [] }, { place: 'right', plates: [plate(10)] })).toBe(
      'right 10 kg',
    );
  });

  it('says that there are none', () => {
    expect(stacks()).toBe('no plates');
    expect(stacks({ place: 'left', plates: [] }, { place: 'right', plates: [] })).toBe('no plates');
  });

  it('names every place where plates can be', () => {
    const handles = [
      'first-handle-left',
      'first-handle-right',
      'second-handle-left',
      'second-handle-right',
    ] as const;
    const on = handles.map((place, at) => ({ place, plates: [plate(at + 1)] }));
    expect(stacks(...on)).toBe(
      'first handle, left 1 kg; first handle, right 2 kg; second handle, left 3 kg; second handle, right 4 kg',
    );
    const [post, belt] = (['post', 'belt'] as const).map((place, at) => ({
      place,
      plates: [plate(at + 1)],
    }));
    expect(post && belt && stacks(post, belt)).toBe('post 1 kg; belt 2 kg');
  });

  it('says weights, pins and what lies on them', () => {
    const fixed = { kind: 'fixed', weight: kilos(20), addOns: [], pieces: 2 } as const;
    expect(loading({ ...fixed, hands: 2 })).toBe('a pair of 20 kg');
    expect(loading({ ...fixed, hands: 1, addOns: [kilos(1.25)] })).toBe('one of 20 kg + 1.25 kg');
    const pin = { kind: 'pin', pin: kilos(40), addOns: [], pieces: 0 } as const;
    expect(loading(pin)).toBe('pin at 40 kg');
    expect(loading({ ...pin, addOns: [kilos(1.25), kilos(1.25)] })).toBe(
      'pin at 40 kg + 1.25 kg + 1.25 kg',
    );
  });

  it('says help as what it takes off', () => {
    const help = (value: number) => loading({ kind: 'assistance', added: kilos(value), pieces: 0 });
    expect(help(0)).toBe('no help');
    expect(help(-20)).toBe('help of 20 kg');
  });
});

describe('countedWords', () => {
  const words = (what: Loading, counts: Parameters<typeof countedWords>[1]) =>
    plain(countedWords({ load: kg(20), shown: kg(20), loading: what }, counts, 'kg', 'en'));
  const one = { kind: 'fixed', weight: kilos(20), hands: 1, addOns: [], pieces: 1 } as const;
  const pin = { kind: 'pin', pin: kilos(20), addOns: [], pieces: 0 } as const;

  it.each([
    [pin, 'total', '20 kg in total, with the bar'],
    [pin, 'stack', '20 kg on the stack'],
    [pin, 'plates', '20 kg of plates'],
    [pin, 'added', '20 kg added to the body'],
    [pin, 'each-hand', '20 kg in each hand'],
    [{ ...one, hands: 2 }, 'each-hand', '20 kg in each hand'],
    [one, 'each-hand', '20 kg in one hand'],
    [one, 'total', '20 kg in total, with the bar'],
  ] as const)('says what the number counts: %#', (what, counts, expected) => {
    expect(words(what, counts)).toBe(expected);
  });
});

describe('handlingWords', () => {
  const words = (...steps: readonly HandlingStep[]) => {
    const handling: Handling = { steps, pieces: steps.length, mostSideDifference: kg(0) };
    return plain(handlingWords(handling, 'en'));
  };
  const on = (place: 'left' | 'right' | 'post', value: number): HandlingStep => ({
    action: 'put-on',
    place,
    plate: plate(value),
    sideDifference: kg(0),
  });

  it('says what is done alike on both sides once', () => {
    expect(words(on('left', 10), on('right', 10))).toBe('put on 10 kg each side');
    expect(words(on('left', 10), on('right', 10), on('left', 10), on('right', 10))).toBe(
      'put on 10 kg × 2 each side',
    );
    expect(words(on('left', 10), on('right', 10), on('left', 5), on('right', 5))).toBe(
      'put on 10 kg each side, put on 5 kg each side',
    );
  });

  it('counts what is done on one side or on no side', () => {
    expect(words(on('left', 10), on('right', 10), on('left', 10))).toBe('put on 10 kg × 3');
    expect(words(on('right', 10), on('right', 10))).toBe('put on 10 kg × 2');
    expect(words(on('left', 10), on('right', 10), on('post', 10), on('post', 10))).toBe(
      'put on 10 kg × 4',
    );
    expect(words(on('post', 10))).toBe('put on 10 kg');
  });

  it('has words for every movement', () => {
    const weight = kilos(12);
    expect(
      words(
        { action: 'take-off', place: 'post', plate: plate(5), sideDifference: kg(0) },
        { action: 'put-back', weight },
        { action: 'pick-up', weight },
        { action: 'remove-add-on', weight },
        { action: 'fit-add-on', weight },
        { action: 'move-pin', to: weight },
        { action: 'set-assistance', added: kilos(-15) },
      ),
    ).toBe(
      'take off 5 kg, put back 12 kg, take 12 kg, remove 12 kg, add 12 kg, pin to 12 kg, set the help to 15 kg',
    );
    expect(words()).toBe('nothing to change');
  });
});
