import type { Field } from '../fields/Field.ts';
import type { FieldProblem } from '../fields/FieldProblem.ts';
import type { ControlProps } from './FieldControl.ts';
import { ManyControl } from './ManyControl.tsx';
import { RowsControl } from './RowsControl.tsx';
import { ScalarControl } from './ScalarControl.tsx';

interface FieldViewProps extends Omit<ControlProps<Field>, 'label' | 'isBare' | 'describedBy'> {}

/** A field with its label, control, and one line below: help, or what would be right. */
export function FieldView({ field, ...rest }: FieldViewProps) {
  const { id, problems } = rest;
  const help = <HelpLine id={`${id}-help`} help={field.help} problems={problems} />;
  const control = { ...rest, label: field.label, describedBy: `${id}-help` };
  if (isOneInput(field)) {
    return (
      <div class="wl-field" data-kind={field.kind}>
        <label class="wl-label" for={id}>
          {field.label}
        </label>
        <ScalarControl field={field} {...control} />
        {help}
      </div>
    );
  }
  return (
    <fieldset class="wl-field" id={`${id}-group`} aria-describedby={`${id}-help`}>
      <legend class="wl-label">{field.label}</legend>
      {groupControl(field, control)}
      {help}
    </fieldset>
  );
}

function groupControl(field: Field, control: Omit<ControlProps<Field>, 'field'>) {
  if (field.kind === 'rows') return <RowsControl field={field} {...control} />;
  if (field.kind === 'many') return <ManyControl field={field} {...control} />;
  return <ScalarControl field={field} {...control} />;
}

type OneInput = Exclude<Field, { kind: 'rows' | 'window' | 'many' }>;

function isOneInput(field: Field): field is OneInput {
  if (field.kind === 'rows' || field.kind === 'window' || field.kind === 'many') return false;
  if (field.kind === 'text') return !field.isGroup;
  return field.kind !== 'choice' || field.options.length > 4;
}

interface HelpLineProps {
  readonly id: string;
  readonly help: string;
  readonly problems: readonly FieldProblem[];
}

function HelpLine({ id, help, problems }: HelpLineProps) {
  const told = problems.map(({ message }) => message).join(' ');
  // what is wrong in a row is seen there, and only heard here
  const isSeen = problems.some(({ path }) => path.length === 0);
  return (
    <p class="wl-help" id={id} aria-live="polite" data-wrong={isSeen ? 'true' : undefined}>
      {isSeen && <span class="wl-mark" aria-hidden="true" />}
      {isSeen ? told : help}
      {told && !isSeen && <span class="wl-unseen"> {told}</span>}
    </p>
  );
}
