import { loadingWords } from '../shared/loadingWords.ts';
import { loadWords } from '../shared/loadWords.ts';
import { type FirstLoadResult, loadOf, reportOf, search } from './compute.ts';
import type { FirstLoadInput } from './fields.ts';
import { feltWords } from './view.tsx';
import { said } from './words.ts';

interface FirstLoadDetailsProps {
  readonly input: FirstLoadInput;
  readonly result: FirstLoadResult;
}

/** The reports that the table looks ahead to. */
const REPORTS = ['far-too-easy', '5', '2', 'form-broke'] as const;

/** How to do the next trial set, and what each way it may feel leads to. */
export function FirstLoadDetails({ input, result }: FirstLoadDetailsProps) {
  const { step } = result;
  if (step.kind !== 'try') return null;
  return (
    <>
      <section class="wl-panel">
        <h2 class="wl-heading">{said.after}</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.columns.felt}</th>
              <th scope="col">{said.columns.next}</th>
            </tr>
          </thead>
          <tbody>
            {REPORTS.map((felt) => (
              <tr key={felt}>
                <th scope="row">{feltWords(felt)}</th>
                <td>{nextAfter(felt, input, result)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p class="wl-soft">{said.afterNote}</p>
      </section>
      <section class="wl-panel">
        <h2 class="wl-heading">{said.how}</h2>
        <p>{loadingWords(step.choice)}</p>
        <ol class="wl-steps">
          {said.steps.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ol>
      </section>
    </>
  );
}

function nextAfter(
  felt: (typeof REPORTS)[number],
  input: FirstLoadInput,
  { question, step, loads }: FirstLoadResult,
): string {
  const { load } = loadOf(step);
  const reps = step.kind === 'try' ? step.reps : 0;
  const tries = [...question.tries, { load, reps, report: reportOf(felt) }];
  const then = search(input, loads, tries).step;
  if (then.kind === 'all-too-heavy' || then.kind === 'no-loads') return said.lighterGear;
  const next = loadOf(then);
  if (then.kind === 'try') return said.trialAgain(loadWords(next.shown, input.show));
  return next.load === load ? said.stays : said.workWith(loadWords(next.shown, input.show));
}
