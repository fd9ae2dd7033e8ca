import { exercises } from '@windlass/core/anatomy';
import type { LeftOut } from '@windlass/core/exchange';
import { exerciseOf } from '../shared/exerciseFields.ts';
import { said } from './words.ts';

/** What is near and is not offered, each with its reasons. */
export function LeftOutList({ leftOut }: { readonly leftOut: readonly LeftOut[] }) {
  if (leftOut.length === 0) return null;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.leftOut}</h2>
      <ul class="wl-sources">
        {leftOut.map(({ exercise, reasons }) => (
          <li key={exercise}>
            <strong>{exerciseOf(exercises, exercise).name}:</strong>{' '}
            {reasons.map((reason) => reason.words).join(' ')}
          </li>
        ))}
      </ul>
    </section>
  );
}
