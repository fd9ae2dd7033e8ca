import { language } from '@windlass/core/basis';
import { render } from 'preact';
import { decodeAddress } from './address/decodeAddress.ts';
import { encodeAddress } from './address/encodeAddress.ts';
import type { Calculator } from './contract/Calculator.ts';
import type { CalculatorResult } from './contract/CalculatorResult.ts';
import { resultOf } from './contract/resultOf.ts';
import type { AttributeProblem } from './element/AttributeProblem.ts';
import { readAttributes } from './element/readAttributes.ts';
import { sheet } from './element/sheet.ts';
import { elementWords } from './element/words.ts';
import { loadCalculator } from './loadCalculator.ts';
import { CalculatorApp } from './ui/CalculatorApp.tsx';

export type {
  CalculatorResult,
  ResultBand,
  ResultCaution,
  ResultProblem,
} from './contract/CalculatorResult.ts';
export type { AttributeProblem } from './element/AttributeProblem.ts';

/** `windlass-result`: sent with the first answer and after every change. Bubbles. */
export type CalculatorResultEvent = CustomEvent<CalculatorResult>;

/** `windlass-problem`: sent for each attribute that cannot be taken. Bubbles. */
export type AttributeProblemEvent = CustomEvent<AttributeProblem>;

declare global {
  interface HTMLElementTagNameMap {
    'windlass-calculator': WindlassCalculator;
  }
  interface HTMLElementEventMap {
    'windlass-result': CalculatorResultEvent;
    'windlass-problem': AttributeProblemEvent;
  }
}

/**
 * `<windlass-calculator calculator="warm-up-ramp" units="lb" work="185lb">` puts a calculator into
 * any page, its styles enclosed. Every field is an attribute, written as in the address of the
 * calculator's page, its name in lower case with hyphens; `units` is `kg` or `lb` for the answer;
 * `query` is a whole state at once and counts before single attributes. A change of an attribute
 * computes again. A value that cannot be taken leaves the default and is told in the console and
 * in a `windlass-problem` event. `tools` is the address of a folder of all calculators; without it
 * nothing links out. Each answer is told in a `windlass-result` event.
 */
export class WindlassCalculator extends HTMLElement {
  readonly #root = this.attachShadow({ mode: 'open' });
  readonly #watch = new MutationObserver((changes) =>
    this.#take([...new Set(changes.map(({ attributeName }) => attributeName ?? ''))]),
  );
  #calculator: Calculator | undefined;
  /** Whether the calculator is there already, and only its state changes. */
  #isDrawn = false;
  /** The state now, as a query; what a person entered is in it. */
  #query = '';

  connectedCallback(): void {
    this.#root.adoptedStyleSheets = [sheet];
    this.#watch.observe(this, { attributes: true });
    void this.#load();
  }

  disconnectedCallback(): void {
    this.#watch.disconnect();
    render(null, this.#root);
  }

  async #load(): Promise<void> {
    const id = this.getAttribute('calculator') ?? '';
    const isWanted = () => this.isConnected && id === (this.getAttribute('calculator') ?? '');
    this.#calculator = undefined;
    this.#isDrawn = false;
    try {
      const calculator = await loadCalculator(id);
      if (!isWanted()) return;
      this.#calculator = calculator;
      if (calculator) this.#begin(calculator);
      else this.#fail(id, 'element.unknown-calculator', elementWords.unknown(id));
    } catch {
      if (isWanted()) this.#fail(id, 'element.not-fetched', elementWords.notFetched);
    }
  }

  /** The state that all attributes ask for; the query counts before single ones. */
  #begin(calculator: Calculator): void {
    const texts = this.#read(calculator, this.getAttributeNames(), calculator.defaults);
    const parameters = new URLSearchParams(this.getAttribute('query') ?? '');
    for (const [name, text] of Object.entries(texts))
      if (!parameters.has(name)) parameters.set(name, text);
    this.#draw(calculator, parameters.toString());
  }

  /** Takes attributes that have changed; the rest of what was entered stays. */
  #take(names: readonly string[]): void {
    const calculator = this.#calculator;
    if (names.includes('calculator')) void this.#load();
    else if (calculator && names.includes('query')) this.#begin(calculator);
    else if (calculator) this.#takeSingle(calculator, names);
  }

  #takeSingle(calculator: Calculator, names: readonly string[]): void {
    const { texts, others } = decodeAddress(calculator, this.#query);
    const changed = this.#read(calculator, names, texts);
    if (Object.keys(changed).length === 0 && !names.includes('tools')) return;
    this.#draw(calculator, encodeAddress(calculator, { ...texts, ...changed }, others));
  }

  #read(calculator: Calculator, names: readonly string[], base: Calculator['defaults']) {
    const values = Object.fromEntries(names.map((name) => [name, this.getAttribute(name)]));
    const { texts, problems } = readAttributes(calculator, values, base);
    for (const problem of problems) this.#warn(problem);
    return texts;
  }

  #draw(calculator: Calculator, query: string): void {
    this.#query = query;
    render(
      <div lang={language}>
        <CalculatorApp
          key={calculator.id}
          calculator={calculator}
          query={query}
          {...(this.#isDrawn && { liveQuery: () => query })}
          onStateChange={(changed) => {
            this.#query = changed;
          }}
          onAnswer={(texts, answer) =>
            this.#tell('windlass-result', resultOf(calculator, texts, answer))
          }
          tools={this.getAttribute('tools')}
        />
      </div>,
      this.#root,
    );
    this.#isDrawn = true;
  }

  #fail(value: string, code: string, message: string): void {
    this.#warn({ calculator: value, attribute: 'calculator', value, code, message });
    render(
      <p class="wl wl-notice" role="alert" lang={language}>
        {message}
      </p>,
      this.#root,
    );
  }

  #warn(problem: AttributeProblem): void {
    console.warn('<windlass-calculator>', problem.message, this);
    this.#tell('windlass-problem', problem);
  }

  #tell<Detail>(name: string, detail: Detail): void {
    this.dispatchEvent(new CustomEvent<Detail>(name, { detail, bubbles: true, composed: true }));
  }
}

if (!customElements.get('windlass-calculator')) {
  customElements.define('windlass-calculator', WindlassCalculator);
}
