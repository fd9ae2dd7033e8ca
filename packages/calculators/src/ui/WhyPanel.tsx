import type { Why } from '../contract/Answer.ts';
import { below } from './below/words.ts';

/** The formula, then the same with these numbers, then what it rests on. */
export function WhyPanel({ why }: { readonly why: Why }) {
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{below.why}</h2>
      <p class="wl-formula">{why.formula}</p>
      <ol class="wl-steps">
        {why.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p class="wl-soft">{why.restsOn}</p>
    </section>
  );
}
