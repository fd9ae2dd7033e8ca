import type { Problem } from '@windlass/core/basis';
import { idOf } from './asks/problemsAt.ts';
import { words } from './words.ts';

/** Over the sheet while it is of an earlier input: what cannot be planned with, and the way there. */
export function OldMark({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <div class="old" role="status">
      <p>
        <strong class="old-mark">{words.old.mark}</strong> {words.old.says}
      </p>
      <ul>
        {problems.slice(0, MOST).map(({ path, message }) => (
          <li key={path.join('/')}>
            <a href={`#${idOf(path)}`} onClick={(event) => goTo(event, idOf(path))}>
              {message}
            </a>
          </li>
        ))}
      </ul>
    </div>
  );
}

const MOST = 3;

/** Goes to the field, opening what it is folded away in. */
function goTo(event: Event, id: string): void {
  event.preventDefault();
  const field = document.getElementById(id);
  for (let fold = field?.closest('details'); fold; fold = fold.parentElement?.closest('details')) {
    fold.open = true;
  }
  field?.scrollIntoView({ block: 'center' });
  field?.focus();
}
