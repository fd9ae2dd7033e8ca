import { renderToString } from 'preact-render-to-string';
import type { Calculator } from './contract/Calculator.ts';
import { CalculatorApp, type CalculatorAppProps } from './ui/CalculatorApp.tsx';

/**
 * The static HTML of a calculator, with its default result or that of `query`. It holds no script
 * and no style attribute, and `hydrateCalculators` brings it to life.
 */
export function renderCalculator(
  calculator: Calculator,
  options: Pick<CalculatorAppProps, 'query' | 'tools'> = {},
): string {
  return renderToString(<CalculatorApp calculator={calculator} {...options} />);
}
