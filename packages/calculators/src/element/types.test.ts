import { describe, expectTypeOf, it } from 'vitest';
import type { AttributeProblem, CalculatorResult, WindlassCalculator } from '../element.tsx';

describe('the types of the element', () => {
  it('come with its name', () => {
    expectTypeOf<
      HTMLElementTagNameMap['windlass-calculator']
    >().toEqualTypeOf<WindlassCalculator>();
  });

  it('come with its events', () => {
    const listen = (element: WindlassCalculator) => {
      element.addEventListener('windlass-result', ({ detail }) => {
        expectTypeOf(detail).toEqualTypeOf<CalculatorResult>();
        expectTypeOf(detail.headline?.exact).toEqualTypeOf<number | undefined>();
      });
      element.addEventListener('windlass-problem', ({ detail }) => {
        expectTypeOf(detail).toEqualTypeOf<AttributeProblem>();
      });
    };
    expectTypeOf(listen).toBeFunction();
  });
});
