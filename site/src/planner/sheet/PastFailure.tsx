import type { Band } from '@windlass/core/basis';
import type { SheetChain } from '@windlass/core/session';
import { words } from '../words.ts';

/** How the last set of a lift goes on past lifting failure, what it needs and for whom it is not. */
export function PastFailure({ chain }: { readonly chain: SheetChain }) {
  const { stages, needs, notes, notFor } = chain;
  return (
    <div>
      <p>{words.lift.pastFailure}:</p>
      <ol>
        {stages.map((stage) => (
          <li key={stage.words}>
            {words.lift.stage(
              stage.words,
              stage.count ? range(stage.count) : '',
              range(stage.seconds),
            )}
          </li>
        ))}
      </ol>
      <ul class="soft">
        {[...needs, ...notes].map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <p class="soft">
        {words.lift.notFor} {notFor.join(' ')}
      </p>
    </div>
  );
}

function range({ low, likely, high, level }: Band): string {
  const [from, middle, to] = [low, likely, high].map(Math.round);
  return `${middle} (${words.lift.between(from ?? 0, to ?? 0, Math.round(level * 10))})`;
}
