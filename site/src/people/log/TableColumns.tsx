import { type ImportPreview, importLog, type LogField } from '@windlass/core/progress';
import type { DoneSession } from '@windlass/core/schema';
import { useMemo, useState } from 'preact/hooks';
import { rememberedUnit } from '../../planner/link/rememberedUnit.ts';
import type { Person } from '../People.ts';
import { Choice } from './Choice.tsx';
import { ReadSets } from './ReadSets.tsx';
import { firstChoice, mappingOf, setColumn } from './TableChoice.ts';
import { words } from './words.ts';

interface TableColumnsProps {
  readonly text: string;
  readonly preview: ImportPreview;
  readonly person: Person;
  readonly sessions: readonly DoneSession[];
  readonly onDone: () => void;
}

const fields = Object.entries(words.brought.fields) as [LogField, string][];

/** Asks what the columns of a table hold and what its cells do not say; what comes of it follows. */
export function TableColumns({ text, preview, ...others }: TableColumnsProps) {
  const asked = words.brought;
  const [choice, setChoice] = useState(() => firstChoice(preview, rememberedUnit() ?? 'kg'));
  const log = useMemo(() => {
    const mapping = mappingOf(choice, preview);
    return 'missing' in mapping ? mapping : importLog(text, mapping);
  }, [text, preview, choice]);
  return (
    <>
      <fieldset class="bring-columns">
        <legend>{asked.columns}</legend>
        {preview.columns.map(({ column, header, samples }) => (
          <Choice
            key={column}
            label={asked.column(header, column + 1)}
            help={samples.join(' · ')}
            value={choice.columns[column] ?? ''}
            options={[['', asked.leaveOut], ...fields]}
            onValue={(field) => setChoice(setColumn(choice, column, field))}
          />
        ))}
      </fieldset>
      <div class="bring-columns">
        <Choice
          label={asked.dateOrder}
          value={choice.dateOrder}
          options={[
            ['', asked.choose],
            ['day-first', asked.dateOrders['day-first']],
            ['month-first', asked.dateOrders['month-first']],
            ['year-first', asked.dateOrders['year-first']],
          ]}
          onValue={(dateOrder) => setChoice({ ...choice, dateOrder })}
        />
        <Choice
          label={asked.unit}
          value={choice.unit}
          options={[
            ['kg', 'kg'],
            ['lb', 'lb'],
          ]}
          onValue={(unit) => setChoice({ ...choice, unit })}
        />
        <Choice
          label={asked.counted}
          value={choice.counts}
          options={[
            ['total', asked.countsChoices.total],
            ['each-hand', asked.countsChoices['each-hand']],
            ['stack', asked.countsChoices.stack],
            ['plates', asked.countsChoices.plates],
            ['added', asked.countsChoices.added],
          ]}
          onValue={(counts) => setChoice({ ...choice, counts })}
        />
        {preview.questions.includes('short-years') && (
          <label class="wl-check">
            <input
              type="checkbox"
              checked={choice.hasShortYears}
              onChange={({ currentTarget: { checked } }) =>
                setChoice({ ...choice, hasShortYears: checked })
              }
            />
            <span>{asked.shortYears}</span>
          </label>
        )}
      </div>
      {'missing' in log ? (
        <p role="status" class="wl-mark">
          {asked.missing(log.missing.map((field) => asked.fields[field]))}
        </p>
      ) : (
        <ReadSets log={log} {...others} />
      )}
    </>
  );
}
