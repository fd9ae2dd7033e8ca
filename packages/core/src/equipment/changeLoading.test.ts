import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { changeLoading } from './changeLoading.ts';
import type { HandlingStep } from './Handling.ts';
import type { FixedLoading, PinLoading } from './Loading.ts';
import { bothEnds, ends, plate } from './oracle/exampleGear.ts';

function inWords(step: HandlingStep): string {
  if ('plate' in step) return `${step.action} ${step.place} ${step.plate.weight.value}`;
  if ('weight' in step) return `${step.action} ${step.weight.value}`;
  return `${step.action} ${'to' in step ? step.to.value : step.added.value}`;
}

const words = (...args: Parameters<typeof changeLoading>) =>
  changeLoading(...args).steps.map(inWords);

describe('changeLoading on a bar', () => {
  it('only adds where everything on the bar can stay, the ends in turn', () => {
    expect(words(bothEnds(plate(20)), bothEnds(plate(20), plate(5)))).toEqual([
      'put-on left 5',
      'put-on right 5',
    ]);
  });

  it('digs down to what both loadings share, the outermost plate first', () => {
    const from = bothEnds(plate(20), plate(10), plate(2.5));
    expect(words(from, bothEnds(plate(20), plate(15)))).toEqual([
      'take-off left 2.5',
      'take-off right 2.5',
      'take-off left 10',
      'take-off right 10',
      'put-on left 15',
      'put-on right 15',
    ]);
  });

  it('strips 240 kg without the ends ever differing by more than one large plate', () => {
    const heavy = bothEnds(...[25, 25, 25, 25, 10].map((value) => plate(value)));
    const strip = changeLoading(heavy, 'nothing');
    expect(strip.pieces).toBe(10);
    expect(strip.mostSideDifference).toBe(kg(25));
    expect(strip.steps.at(-1)).toMatchObject({ place: 'right', sideDifference: 0 });
  });

  it('starts with the heavier end of an uneven bar', () => {
    const uneven = ends([plate(10)], [plate(10), plate(5)]);
    expect(words(uneven, 'nothing')).toEqual([
      'take-off right 5',
      'take-off left 10',
      'take-off right 10',
    ]);
  });

  it('puts plates on from how the bar hangs once the others are off', () => {
    const uneven = ends([plate(10), plate(5)], [plate(10)]);
    const { steps } = changeLoading(uneven, bothEnds(plate(10), plate(20)));
    expect(steps.map(inWords)).toEqual(['take-off left 5', 'put-on left 20', 'put-on right 20']);
    expect(steps).toMatchObject([0, 20, 0].map((value) => ({ sideDifference: kg(value) })));
  });

  it('tells a thick or wide plate from another of the same weight, and 45 lb from 20 kg', () => {
    const thick = { ...plate(20), thicknessMm: 60 };
    expect(changeLoading(bothEnds(thick), bothEnds(plate(20))).pieces).toBe(4);
    const wide = { ...plate(20), diameterMm: 450 };
    expect(changeLoading(bothEnds(wide), bothEnds({ ...wide, diameterMm: 400 })).pieces).toBe(4);
    expect(changeLoading(bothEnds(plate(45, 'lb')), bothEnds(plate(20))).pieces).toBe(4);
  });

  it('has nothing to do between nothing and nothing', () => {
    expect(changeLoading('nothing', 'nothing')).toEqual({
      steps: [],
      pieces: 0,
      mostSideDifference: 0,
    });
  });
});

describe('changeLoading on other equipment', () => {
  const pair = (value: number, addOns: readonly number[] = []): FixedLoading => ({
    kind: 'fixed',
    weight: { value, unit: 'kg' },
    hands: 2,
    addOns: addOns.map((weight) => ({ value: weight, unit: 'kg' })),
    pieces: 2 + 2 * addOns.length,
  });
  const pin = (value: number, addOns: readonly number[] = []): PinLoading => ({
    kind: 'pin',
    pin: { value, unit: 'kg' },
    addOns: addOns.map((weight) => ({ value: weight, unit: 'kg' })),
    pieces: addOns.length,
  });

  it('puts a pair back and picks the next one up', () => {
    expect(words(pair(10), pair(12))).toEqual([
      'put-back 10',
      'put-back 10',
      'pick-up 12',
      'pick-up 12',
    ]);
  });

  it('takes add-ons off before a weight goes back, and fits them when the next is in the hand', () => {
    const single = { ...pair(10, [1]), hands: 1, pieces: 2 } as const;
    expect(words(single, 'nothing')).toEqual(['remove-add-on 1', 'put-back 10']);
    expect(words('nothing', single)).toEqual(['pick-up 10', 'fit-add-on 1']);
    expect(words(single, pair(10))).toEqual([
      ...['remove-add-on 1', 'put-back 10'],
      ...['pick-up 10', 'pick-up 10'],
    ]);
  });

  it('leaves as many equal add-ons as both loadings have', () => {
    expect(words(pin(20, [1, 1, 2]), pin(20, [1]))).toEqual(['remove-add-on 1', 'remove-add-on 2']);
    expect(words('nothing', pin(20, [1]))).toEqual(['move-pin 20', 'fit-add-on 1']);
  });

  it('goes from one amount of help to another, and leaves the same one', () => {
    const help = (value: number) =>
      ({ kind: 'assistance', added: { value, unit: 'kg' }, pieces: 0 }) as const;
    expect(words(help(-15), help(-20))).toEqual(['set-assistance -20']);
    expect(words(help(-15), help(-15))).toEqual([]);
    expect(words(help(-15), 'nothing')).toEqual(['set-assistance 0']);
  });

  it('loads two handles one after the other, the ends of each in turn', () => {
    const handles = {
      kind: 'plates',
      stacks: (
        [
          'first-handle-left',
          'first-handle-right',
          'second-handle-left',
          'second-handle-right',
        ] as const
      ).map((place) => ({ place, plates: [plate(2), plate(1)] })),
      pieces: 8,
    } as const;
    const loaded = changeLoading('nothing', handles);
    expect(loaded.steps.map(inWords)).toEqual([
      ...['put-on first-handle-left 2', 'put-on first-handle-right 2'],
      ...['put-on first-handle-left 1', 'put-on first-handle-right 1'],
      ...['put-on second-handle-left 2', 'put-on second-handle-right 2'],
      ...['put-on second-handle-left 1', 'put-on second-handle-right 1'],
    ]);
    expect(loaded.mostSideDifference).toBe(kg(2));
  });

  it('digs down one post and builds it up again', () => {
    const post = (...values: readonly number[]) =>
      ({
        kind: 'plates',
        stacks: [{ place: 'post', plates: values.map((value) => plate(value)) }],
        pieces: values.length,
      }) as const;
    const change = changeLoading(post(20, 10, 5), post(20, 2.5, 1.25));
    expect(change.steps.map(inWords)).toEqual([
      ...['take-off post 5', 'take-off post 10'],
      ...['put-on post 2.5', 'put-on post 1.25'],
    ]);
    expect(change.mostSideDifference).toBe(0);
  });

  it('changes only the magnets of a pair that stays in hand', () => {
    expect(words(pair(10, [0.5]), pair(10, [1]))).toEqual([
      'remove-add-on 0.5',
      'remove-add-on 0.5',
      'fit-add-on 1',
      'fit-add-on 1',
    ]);
  });

  it('moves a pin once and leaves add-ons that both loadings have', () => {
    expect(words(pin(20, [1, 2]), pin(25, [2]))).toEqual(['move-pin 25', 'remove-add-on 1']);
    expect(words(pin(20), pin(20))).toEqual([]);
    expect(words(pin(20, [1]), 'nothing')).toEqual(['remove-add-on 1']);
  });

  it('ends the help and hangs plates on a belt', () => {
    const helped = { kind: 'assistance', added: { value: -15, unit: 'kg' }, pieces: 0 } as const;
    const belt = {
      kind: 'plates',
      stacks: [{ place: 'belt', plates: [plate(5)] }],
      pieces: 1,
    } as const;
    expect(words(helped, belt)).toEqual(['put-on belt 5', 'set-assistance 0']);
    expect(words('nothing', helped)).toEqual(['set-assistance -15']);
  });

  it('refuses to change a bar into dumbbells', () => {
    expect(() => changeLoading(bothEnds(plate(5)), pair(10))).toThrow(
      /changeLoading: .* from plates to fixed;/,
    );
    expect(() => changeLoading(pair(10), pin(5))).toThrow(/from fixed to pin;/);
    expect(() => changeLoading(pin(5), bothEnds())).toThrow(/from pin to plates;/);
  });
});
