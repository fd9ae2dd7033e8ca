import type { HandlingStep, ReachableLoad } from '@windlass/core/equipment';
import { weightOfBar } from '../shared/barFields.ts';
import { distanceWords, loadWords, pieceWords } from '../shared/loadWords.ts';
import { drawnPlates, plateWords } from '../shared/plateWords.ts';
import { sideOf } from '../shared/sideOf.ts';
import { BarDrawing } from '../ui/BarDrawing.tsx';
import type { BarLoadingInput, BarLoadingResult } from './compute.ts';

interface BarLoadingViewProps {
  readonly input: BarLoadingInput;
  readonly result: BarLoadingResult;
}

/** The loaded sleeve, and its plates as words large enough to read from the bar. */
export function BarLoadingView({ input, result }: BarLoadingViewProps) {
  const { side, newPerSide, change } = result;
  const plates = side.length === 0 ? 'nothing' : plateWords(side);
  return (
    <>
      <p class="wl-pieces-label">Each side, from the inside out</p>
      <p class="wl-pieces">{plates}</p>
      <BarDrawing
        plates={drawnPlates(side, change.from ? newPerSide : 0)}
        barLabel={pieceWords(weightOfBar(input))}
        says={`One end of the bar, from the inside out: ${plates}. The other end is the same.`}
      />
    </>
  );
}

/** The neighbours of the load, and the way to it from what is on the bar. */
export function BarLoadingDetails({ input, result }: BarLoadingViewProps) {
  const { below, chosen, above, change } = result;
  const rows: readonly (readonly [name: string, load: ReachableLoad | null])[] = [
    ['Next lighter', below],
    ['This one', chosen],
    ['Next heavier', above],
  ];
  return (
    <>
      <section class="wl-panel">
        <h2 class="wl-heading">What this bar can make near it</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">Load</th>
              <th scope="col" class="wl-figure">
                Total
              </th>
              <th scope="col">Each side</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, load]) => (
              <tr key={name} data-chosen={load === chosen ? 'true' : undefined}>
                <th scope="row">{name}</th>
                <td class="wl-figure">{load ? loadWords(load.load, input.show) : 'none'}</td>
                <td>
                  {load ? plateWords(sideOf(load)) || 'nothing' : ''}
                  <span class="wl-row-note">
                    {load ? distanceWords(load.load, result.target, input.show) : ''}
                  </span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {change.from && (
        <section class="wl-panel">
          <h2 class="wl-heading">From {loadWords(change.from.load, input.show)} to this</h2>
          <StepList steps={change.steps} />
        </section>
      )}
    </>
  );
}

function StepList({ steps }: { readonly steps: readonly HandlingStep[] }) {
  if (steps.length === 0) return <p>Nothing to change: it is on the bar.</p>;
  return (
    <ol class="wl-steps">
      {steps.map((step, place) => (
        <li key={place}>
          {step.action === 'take-off' && `Take off ${pieceWords(step.plate.weight)}, ${step.place}`}
          {step.action === 'put-on' && `Put on ${pieceWords(step.plate.weight)}, ${step.place}`}
        </li>
      ))}
    </ol>
  );
}
