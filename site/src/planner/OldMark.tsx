import type { Problem } from '@windlass/core/basis';
import { idOf } from './asks/problemsAt.ts';
import { goToField } from './goToField.ts';
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
            <a
              href={`#${idOf(path)}`}
              onClick={(event) => {
                event.preventDefault();
                goToField(idOf(path));
              }}
            >
              {message}
            </a>
          </li>
        ))}
      </ul>
    </div>
  );
}

const MOST = 3;
