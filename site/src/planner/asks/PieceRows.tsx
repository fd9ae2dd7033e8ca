import { listAt, type Path, textAt } from '../state/tree.ts';
import { useAsking } from './Asking.ts';
import { CellLoad } from './fields/CellLoad.tsx';
import { CellNumber } from './fields/CellNumber.tsx';
import { HelpLine } from './fields/HelpLine.tsx';
import { idOf, problemsAt } from './problemsAt.ts';
import { words } from './words.ts';

interface PieceRowsProps {
  readonly at: Path;
  readonly label: string;
  readonly add?: string;
  /** Fewest rows that there must be. */
  readonly fewest?: number;
  /** Without any row the list itself is not there. */
  readonly isOptional?: boolean;
  readonly help?: string;
}

/** Weights by the piece: how heavy, how many. A new row begins as a pair of what the last one is. */
export function PieceRows(props: PieceRowsProps) {
  const { at, label, add = words.gym.addRow, fewest = 0, isOptional = false, help } = props;
  const { draft, problems, set } = useAsking();
  const rows = listAt(draft, at);
  const addRow = () => {
    const weight = textAt(draft, [...at, rows.length - 1, 'weight']) || '10 kg';
    set([...at, rows.length], { weight, pieces: 2 });
  };
  return (
    <fieldset class="pieces">
      <legend class="ask-label">{label}</legend>
      {rows.map((_, place) => (
        <div key={place} class="pieces-row">
          <CellLoad
            at={[...at, place, 'weight']}
            label={words.gym.row(label, place + 1, words.gym.weight)}
          />
          <CellNumber
            at={[...at, place, 'pieces']}
            label={words.gym.row(label, place + 1, words.gym.pieces)}
            max={1000}
          />
          <button
            type="button"
            class="wl-remove"
            disabled={rows.length <= fewest}
            aria-label={words.asks.remove(words.gym.row(label, place + 1, ''))}
            onClick={() => set(isOptional && rows.length === 1 ? at : [...at, place], undefined)}
          >
            <span aria-hidden="true">×</span>
          </button>
        </div>
      ))}
      <HelpLine
        id={`${idOf(at)}-help`}
        problems={problemsAt(problems, at)}
        {...(help !== undefined && { help })}
      />
      <button type="button" class="wl-button" onClick={addRow}>
        {add}
      </button>
    </fieldset>
  );
}
