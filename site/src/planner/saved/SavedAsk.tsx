import { useId, useState } from 'preact/hooks';
import { storageWords } from '../../storage/index.ts';
import { useAsking } from '../asks/Asking.ts';
import { today } from '../state/today.ts';
import { getAt, type Json, textAt } from '../state/tree.ts';
import { keepPart } from './keepPart.ts';
import { openSaved } from './openSaved.ts';
import { type SavedPart, savedId, withSavedId } from './SavedIds.ts';
import { sameParts } from './sameParts.ts';
import { type SavedParts, useSaved } from './useSaved.ts';
import { withLog } from './withLog.ts';
import { words } from './words.ts';

/** Chooses a kept person or gym for the plan, and keeps what the plan has of it. */
export function SavedAsk({ part }: { readonly part: SavedPart }) {
  const { draft, change } = useAsking();
  const saved = useSaved(savedId(draft, 'client'));
  const [said, say] = useState('');
  const id = useId();
  if (saved === undefined) return null;
  if (saved.kind === 'failed') return <p class="soft">{storageWords.failed(saved)}</p>;
  const options = optionsOf(saved, part);
  const chosen = options.find((one) => one.id === savedId(draft, part));
  const own = getAt(draft, [part]) ?? null;
  const isSame = chosen !== undefined && sameParts(own, keptContent(saved, part, chosen.content));

  const choose = async (wanted: string) => {
    say('');
    if (wanted === '') return change((before) => withSavedId(before, part, undefined));
    const opened = await openSaved(part, wanted, today());
    if (opened.kind === 'opened') change(opened.to);
    else say(opened.says);
  };
  const keep = async () => {
    const kept = await keepPart(saved, part, draft);
    say(kept.says);
    if (kept.kind === 'kept') change((before) => withSavedId(before, part, kept.id));
  };
  return (
    <div class="ask">
      <label class="ask-label" for={id}>
        {words[part].label}
      </label>
      <div class="ask-with">
        <select
          id={id}
          class="wl-select"
          value={chosen?.id ?? ''}
          aria-describedby={`${id}-help`}
          onChange={({ currentTarget: { value } }) => choose(value)}
        >
          <option value="">{words[part].none}</option>
          {options.map((one) => (
            <option key={one.id} value={one.id} selected={one.id === chosen?.id}>
              {one.name}
            </option>
          ))}
        </select>
        <button type="button" class="wl-button" disabled={isSame} onClick={keep}>
          {isSame ? words.isKept : chosen ? words[part].save : words[part].keep}
        </button>
      </div>
      <p class="ask-help saved-says" id={`${id}-help`} role="status">
        {said}
      </p>
    </div>
  );
}

interface Option {
  readonly id: string;
  readonly name: string;
  readonly content: Json;
}

function optionsOf({ clients, gyms }: SavedParts, part: SavedPart): readonly Option[] {
  const all =
    part === 'client'
      ? clients.map(({ id, client }) => ({ id, content: client }))
      : gyms.map(({ id, gym }) => ({ id, content: gym }));
  return all
    .map((one) => ({ ...one, name: textAt(one.content, ['name']) }))
    .sort((a, b) => a.name.localeCompare(b.name));
}

/** What the draft would hold had nothing been changed since it was chosen. */
function keptContent({ log }: SavedParts, part: SavedPart, content: Json): Json {
  return part === 'client' ? withLog(content, log) : content;
}
