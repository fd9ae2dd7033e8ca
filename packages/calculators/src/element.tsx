import { render } from 'preact';
import { loadCalculator } from './loadCalculator.ts';
import { CalculatorApp } from './ui/CalculatorApp.tsx';
import css from './ui/styles.css?inline';

/** Sent after every change; `detail.query` is the state, ready for the `query` attribute. */
export type CalculatorChange = CustomEvent<{ readonly query: string }>;

/**
 * `<windlass-calculator calculator="bar-loading" query="target=100kg">` puts a calculator into any
 * page, its styles enclosed. `tools` is the address of a folder of all calculators; without it
 * nothing links out. Each change sends a `windlass-change` event.
 */
export class WindlassCalculator extends HTMLElement {
  static readonly observedAttributes = ['calculator', 'query', 'tools'];

  readonly #root = this.attachShadow({ mode: 'open' });

  connectedCallback(): void {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    this.#root.adoptedStyleSheets = [sheet];
    void this.#draw();
  }

  disconnectedCallback(): void {
    render(null, this.#root);
  }

  attributeChangedCallback(): void {
    if (this.isConnected) void this.#draw();
  }

  async #draw(): Promise<void> {
    const id = this.getAttribute('calculator') ?? '';
    const query = this.getAttribute('query') ?? '';
    const calculator = await loadCalculator(id);
    if (!this.isConnected || id !== this.getAttribute('calculator')) return;
    const tell = (changed: string) =>
      this.dispatchEvent(
        new CustomEvent('windlass-change', { detail: { query: changed }, bubbles: true }),
      );
    render(
      calculator ? (
        <CalculatorApp
          key={`${id}?${query}`}
          calculator={calculator}
          query={query}
          onStateChange={tell}
          tools={this.getAttribute('tools')}
        />
      ) : null,
      this.#root,
    );
  }
}

if (!customElements.get('windlass-calculator')) {
  customElements.define('windlass-calculator', WindlassCalculator);
}
