import { NumberControl } from '@windlass/calculators/ui';
import { type Path, textAt } from '../../state/tree.ts';
import { typedNumber } from '../../state/typedNumber.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';

interface CellNumberProps {
  readonly at: Path;
  readonly label: string;
  readonly max: number;
}

/** A whole number in a row of a table, named by its row and column. */
export function CellNumber({ at, label, max }: CellNumberProps) {
  const { draft, problems, set } = useAsking();
  return (
    <NumberControl
      id={idOf(at)}
      field={{ kind: 'number', label, help: '', unit: '', min: 0, max, step: 1, default: 0 }}
      text={textAt(draft, at)}
      onText={(text) => set(at, typedNumber(text))}
      problems={problemsAt(problems, at)}
      label={label}
      isBare
    />
  );
}
