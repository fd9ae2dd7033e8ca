import { CopyButton } from '@windlass/calculators/ui';
import { exampleIds, examples } from './state/examples.ts';
import { inUnit } from './state/inUnit.ts';
import { type Json, textAt } from './state/tree.ts';
import { words } from './words.ts';

interface TopBarProps {
  readonly draft: Json;
  readonly canUndo: boolean;
  readonly onStart: (draft: Json) => void;
  readonly onUndo: () => void;
  readonly link: () => string;
}

/** What the page is for, the examples to start from, and the way back. */
export function TopBar({ draft, canUndo, onStart, onUndo, link }: TopBarProps) {
  const unit = textAt(draft, ['intent', 'unit']);
  const text = JSON.stringify(draft);
  return (
    <div class="top">
      <h1>{words.title}</h1>
      <fieldset class="top-starts">
        <legend class="visually-hidden">{words.starts.label}</legend>
        {exampleIds.map((id) => (
          <button
            key={id}
            type="button"
            class="wl-button"
            aria-pressed={JSON.stringify(inUnit(examples[id], unit)) === text}
            onClick={() => onStart(inUnit(examples[id], unit))}
          >
            {words.starts.names[id]}
          </button>
        ))}
      </fieldset>
      <div class="top-actions">
        <button type="button" class="wl-button" disabled={!canUndo} onClick={onUndo}>
          {words.actions.undo}
        </button>
        <span class="top-wide">
          <CopyButton label={words.actions.copyLink} text={link} />
          <button type="button" class="wl-button" onClick={() => print()}>
            {words.actions.print}
          </button>
        </span>
      </div>
      <noscript>
        <p class="soft">{words.starts.noScript}</p>
      </noscript>
    </div>
  );
}
