import { NumberControl, type NumberField } from '@windlass/calculators/ui';
import { textAt } from '../../state/tree.ts';
import { typedNumber } from '../../state/typedNumber.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

interface NumberAskProps extends FieldProps {
  readonly min: number;
  readonly max: number;
  readonly step?: number;
  readonly unit?: string;
  /** Where the steps begin while the field is empty. */
  readonly start?: number;
  readonly isOptional?: boolean;
}

/** A number with its unit between two step buttons. */
export function NumberAsk(props: NumberAskProps) {
  const { at, label, min, max, step = 1, unit = '', start = min, isOptional = false } = props;
  const { draft, problems, set } = useAsking();
  const field: NumberField = {
    kind: 'number',
    label,
    help: '',
    unit,
    min,
    max,
    step,
    default: start,
  };
  return (
    <FieldFrame {...props}>
      <NumberControl
        id={idOf(at)}
        field={field}
        text={textAt(draft, at)}
        onText={(text) => set(at, isOptional && text.trim() === '' ? undefined : typedNumber(text))}
        problems={problemsAt(problems, at)}
        label={label}
        describedBy={`${idOf(at)}-help`}
      />
    </FieldFrame>
  );
}
