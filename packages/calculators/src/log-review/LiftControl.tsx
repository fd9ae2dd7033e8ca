import { readTexts } from '../contract/readTexts.ts';
import type { TextField } from '../fields/Field.ts';
import type { ControlProps } from '../ui/FieldControl.ts';
import { liftName } from './liftName.ts';
import { type LogInput, logFields } from './logFields.ts';
import { loggedSets } from './loggedSets.ts';
import { said } from './words.ts';

/** The lifts of the log, the one trained last first. */
export function LiftControl(props: ControlProps<TextField>) {
  const { id, text, onText, describedBy, texts = {} } = props;
  const read = readTexts(logFields, texts);
  const names = read.kind === 'input' ? liftsIn(read.input) : [];
  const isKnown = text === '' || names.includes(text);
  return (
    <select
      id={id}
      class="wl-select"
      aria-describedby={describedBy}
      value={text}
      onChange={(event) => onText(event.currentTarget.value)}
    >
      <option value="" selected={text === ''}>
        {said.trainedLast}
      </option>
      {!isKnown && (
        <option value={text} selected>
          {liftName(text)}
        </option>
      )}
      {names.map((name) => (
        <option key={name} value={name} selected={text === name}>
          {liftName(name)}
        </option>
      ))}
    </select>
  );
}

function liftsIn(input: LogInput): readonly string[] {
  const last = new Map<string, string>();
  for (const { exercise, date } of loggedSets(input).sets) {
    if (date > (last.get(exercise) ?? '')) last.set(exercise, date);
  }
  return [...last.entries()]
    .sort(([a, dayA], [b, dayB]) => (dayA === dayB ? (a < b ? -1 : 1) : dayA < dayB ? 1 : -1))
    .map(([name]) => name);
}
