import { LoadControl } from '@windlass/calculators/ui';
import { type Path, textAt } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';

interface CellProps {
  readonly at: Path;
  readonly label: string;
}

const field = {
  kind: 'load',
  label: '',
  help: '',
  minKg: 0,
  maxKg: 1000,
  step: { kg: 1.25, lb: 2.5 },
  default: null,
} as const;

/** A load in a row of a table, named by its row and column. */
export function CellLoad({ at, label }: CellProps) {
  const { draft, problems, set } = useAsking();
  return (
    <LoadControl
      id={idOf(at)}
      field={field}
      text={textAt(draft, at)}
      onText={(text) => set(at, text)}
      problems={problemsAt(problems, at)}
      label={label}
      isBare
    />
  );
}
