import type { ScalarField } from '../fields/Field.ts';
import { ChoiceControl } from './ChoiceControl.tsx';
import type { ControlProps } from './FieldControl.ts';
import { LoadControl } from './LoadControl.tsx';
import { MomentControl } from './MomentControl.tsx';
import { NumberControl } from './NumberControl.tsx';
import { SearchControl } from './SearchControl.tsx';
import { TempoControl } from './TempoControl.tsx';
import { TextControl } from './TextControl.tsx';
import { WindowControl } from './WindowControl.tsx';

/** More options than this are searched, not scrolled. */
const MANY_OPTIONS = 24;

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
      return field.options.length > MANY_OPTIONS ? (
        <SearchControl field={field} {...rest} />
      ) : (
        <ChoiceControl field={field} {...rest} />
      );
    case 'text': {
      const Control = field.control ?? TextControl;
      return <Control field={field} {...rest} />;
    }
    case 'date':
    case 'time':
      return <MomentControl field={field} {...rest} />;
  }
}
