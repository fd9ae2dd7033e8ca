import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Calculator } from '../contract/Calculator.ts';
import type { FieldGroup } from '../contract/Definition.ts';
import { isShown } from '../contract/isShown.ts';
import type { Texts } from '../fields/Field.ts';
import type { FieldProblem } from '../fields/FieldProblem.ts';
import { words } from '../words.ts';
import { FieldView } from './FieldView.tsx';

interface FormProps {
  readonly calculator: Calculator;
  readonly texts: Texts;
  readonly problems: Readonly<Record<string, readonly FieldProblem[]>>;
  readonly onText: (name: string, text: string) => void;
}

/** The inputs of a calculator, group by group. A change counts at once; there is nothing to submit. */
export function Form(props: FormProps) {
  return (
    <form
      class="wl-form"
      aria-label={`${words.form.region}: ${props.calculator.title}`}
      novalidate
      onSubmit={(event) => event.preventDefault()}
    >
      {props.calculator.groups.map((group) => (
        <Group key={group.legend} group={group} {...props} />
      ))}
    </form>
  );
}

function Group({ group, ...props }: FormProps & { readonly group: FieldGroup<string> }) {
  const { calculator, texts, problems, onText } = props;
  const shown = group.fields.flatMap((name) => {
    const field = calculator.fields[name];
    return field && isShown(field, texts) ? [{ name, field }] : [];
  });
  if (shown.length === 0) return null;
  const fields = shown.map(({ name, field }) => (
    <FieldView
      key={name}
      id={`${calculator.id}-${name}`}
      field={field}
      text={texts[name] ?? ''}
      onText={(text) => onText(name, text)}
      problems={problems[name] ?? []}
      texts={texts}
      equipmentStep={(direction) => calculator.stepLoad(name, texts, direction)}
      newRow={() => calculator.newRow(name, texts)}
    />
  ));
  if (!group.folded) return <div class="wl-group">{fields}</div>;
  const isWrong = shown.some(({ name }) => problems[name]);
  return (
    <Folded legend={group.legend} mustOpen={isWrong}>
      {fields}
    </Folded>
  );
}

interface FoldedProps {
  readonly legend: string;
  readonly mustOpen: boolean;
  readonly children: ComponentChildren;
}

function Folded({ legend, mustOpen, children }: FoldedProps) {
  const element = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (mustOpen && element.current) element.current.open = true;
  }, [mustOpen]);
  return (
    <details class="wl-group wl-folded" ref={element}>
      <summary>{legend}</summary>
      {children}
    </details>
  );
}
