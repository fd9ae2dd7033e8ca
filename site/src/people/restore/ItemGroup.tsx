import type { SavedLists } from '@windlass/core/schema';
import type { RestoreItem, RestoreState } from './compareBackup.ts';
import { differingParts } from './contentOf.ts';
import { itemName } from './itemName.ts';
import { momentWords } from './momentWords.ts';
import { words } from './words.ts';

interface ItemGroupProps {
  readonly state: RestoreState;
  readonly items: readonly RestoreItem[];
  readonly clients: SavedLists['clients'];
  readonly isTaken: (item: RestoreItem) => boolean;
  readonly onTake: (items: readonly RestoreItem[], isWanted: boolean) => void;
}

const FEW = 6;

/** Records of a file that stand to those here in one way, with a choice for each where there is one. */
export function ItemGroup({ state, items, clients, isTaken, onTake }: ItemGroupProps) {
  if (items.length === 0) return null;
  const isOpen = state !== 'same' && (state === 'conflict' || items.length <= FEW);
  return (
    <details class="restore-group" open={isOpen} data-state={state}>
      <summary>
        {words.states[state]} <span class="restore-count">{items.length}</span>
      </summary>
      {state !== 'same' && items.length > 1 && (
        <div class="kept-actions">
          <button type="button" class="wl-button" onClick={() => onTake(items, true)}>
            {words.all.take}
          </button>
          <button type="button" class="wl-button" onClick={() => onTake(items, false)}>
            {words.all.keep}
          </button>
        </div>
      )}
      <ul>
        {items.map((item) => (
          <li key={`${item.kind}/${item.file.id}`}>
            <Item
              item={item}
              name={itemName(item, clients)}
              isTaken={isTaken(item)}
              onTake={onTake}
            />
          </li>
        ))}
      </ul>
    </details>
  );
}

interface ItemProps {
  readonly item: RestoreItem;
  readonly name: string;
  readonly isTaken: boolean;
  readonly onTake: ItemGroupProps['onTake'];
}

function Item({ item, name, isTaken, onTake }: ItemProps) {
  const whole = `${words.kinds[item.kind]}: ${name}`;
  if (item.state === 'same') return <p>{whole}</p>;
  const isNew = item.state === 'added';
  return (
    <fieldset class="restore-item">
      <legend>{whole}</legend>
      {whenWords(item) !== '' && <p class="soft">{whenWords(item)}</p>}
      <div class="wl-segments">
        {([true, false] as const).map((isWanted) => (
          <label key={String(isWanted)} class="wl-segment">
            <input
              type="radio"
              name={`${item.kind}/${item.file.id}`}
              checked={isTaken === isWanted}
              onChange={() => onTake([item], isWanted)}
            />
            <span>
              {isWanted ? (isNew ? words.add : words.take) : isNew ? words.leave : words.keep}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function whenWords({ file, here }: RestoreItem): string {
  if (here === undefined) return '';
  const parts = differingParts(here, file).map((part) => words.parts[part] ?? part);
  const when =
    'changedAt' in here && 'changedAt' in file
      ? [words.changed(momentWords(here.changedAt), momentWords(file.changedAt))]
      : [];
  return [words.differs(parts), ...when].join('; ');
}
