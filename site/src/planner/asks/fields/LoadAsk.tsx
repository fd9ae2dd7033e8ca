import { LoadControl, type LoadField } from '@windlass/calculators/ui';
import { textAt } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { idOf, problemsAt } from '../problemsAt.ts';
import { FieldFrame, type FieldProps } from './FieldFrame.tsx';

interface LoadAskProps extends FieldProps {
  readonly isOptional?: boolean;
  readonly step?: Readonly<Record<'kg' | 'lb', number>>;
  readonly minKg?: number;
}

const USUAL_STEP = { kg: 2.5, lb: 5 };

/** A load with its unit; kilograms and pounds may be mixed freely. */
export function LoadAsk(props: LoadAskProps) {
  const { at, label, isOptional = false, step = USUAL_STEP, minKg = 0 } = props;
  const { draft, problems, set } = useAsking();
  const field: LoadField = {
    kind: 'load',
    label,
    help: '',
    minKg,
    maxKg: 1000,
    step,
    default: null,
  };
  return (
    <FieldFrame {...props}>
      <LoadControl
        id={idOf(at)}
        field={field}
        text={textAt(draft, at)}
        onText={(text) => set(at, isOptional && text === '' ? undefined : text)}
        problems={problemsAt(problems, at)}
        label={label}
        describedBy={`${idOf(at)}-help`}
      />
    </FieldFrame>
  );
}
