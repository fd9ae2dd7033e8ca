import type { ScalarField } from '../fields/Field.ts';
import { ChoiceControl } from './ChoiceControl.tsx';
import type { ControlProps } from './FieldControl.ts';
import { LoadControl } from './LoadControl.tsx';
import { NumberControl } from './NumberControl.tsx';
import { TempoControl } from './TempoControl.tsx';
import { WindowControl } from './WindowControl.tsx';

/** The control for one value, by the kind of its field. */
export function ScalarControl({ field, ...rest }: ControlProps<ScalarField>) {
  switch (field.kind) {
    case 'number':
      return <NumberControl field={field} {...rest} />;
    case 'load':
      return <LoadControl field={field} {...rest} />;
    case 'tempo':
      return <TempoControl field={field} {...rest} />;
    case 'window':
      return <WindowControl field={field} {...rest} />;
    case 'choice':
      return <ChoiceControl field={field} {...rest} />;
  }
}
