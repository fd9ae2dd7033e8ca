import { getAt, type Json, type Path } from '../../state/tree.ts';
import { useAsking } from '../Asking.ts';
import { SelectAsk } from './SelectAsk.tsx';

interface ChoiceAskProps {
  readonly at: Path;
  readonly label: string;
  readonly help?: string;
  readonly isPart?: boolean;
  readonly choices: Readonly<Record<string, string>>;
  /** What it is called when the field is not there; without it the field is always there. */
  readonly nothing?: string;
}

/** One of a field's fixed words. `true` and `false` are a yes and a no; numbers stay numbers. */
export function ChoiceAsk({ choices, nothing, ...props }: ChoiceAskProps) {
  const { draft, set } = useAsking();
  const value = String(getAt(draft, props.at) ?? '');
  const options = Object.entries(choices);
  return (
    <SelectAsk
      {...props}
      options={nothing === undefined ? options : [['', nothing], ...options]}
      value={value}
      onValue={(chosen) => set(props.at, valueFrom(chosen))}
    />
  );
}

function valueFrom(chosen: string): Json | undefined {
  if (chosen === '') return undefined;
  if (chosen === 'true' || chosen === 'false') return chosen === 'true';
  return chosen;
}
