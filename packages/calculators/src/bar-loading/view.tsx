import type { HandlingStep, ReachableLoad } from '@windlass/core/equipment';
import { weightOfBar } from '../shared/barFields.ts';
import { distanceWords, loadWords, pieceWords } from '../shared/loadWords.ts';
import { drawnPlates, plateWords } from '../shared/plateWords.ts';
import { sideOf } from '../shared/sideOf.ts';
import { BarDrawing } from '../ui/BarDrawing.tsx';
import type { BarLoadingInput, BarLoadingResult } from './compute.ts';
import { said } from './words.ts';

interface BarLoadingViewProps {
  readonly input: BarLoadingInput;
  readonly result: BarLoadingResult;
}

/** The loaded sleeve, and its plates as words large enough to read from the bar. */
export function BarLoadingView({ input, result }: BarLoadingViewProps) {
  const { side, newPerSide, change } = result;
  const plates = side.length === 0 ? said.nothing : plateWords(side);
  return (
    <>
      <p class="wl-pieces-label">{said.eachSide}</p>
      <p class="wl-pieces">{plates}</p>
      <BarDrawing
        plates={drawnPlates(side, change.from ? newPerSide : 0)}
        barLabel={pieceWords(weightOfBar(input))}
        says={said.drawing(plates)}
      />
    </>
  );
}

/** The neighbours of the load, and the way to it from what is on the bar. */
export function BarLoadingDetails({ input, result }: BarLoadingViewProps) {
  const { below, chosen, above, change } = result;
  const rows: readonly (readonly [name: string, load: ReachableLoad | null])[] = [
    [said.lighter, below],
    [said.this, chosen],
    [said.heavier, above],
  ];
  return (
    <>
      <section class="wl-panel">
        <h2 class="wl-heading">{said.near}</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{said.columns.load}</th>
              <th scope="col" class="wl-figure">
                {said.columns.total}
              </th>
              <th scope="col">{said.columns.side}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, load]) => (
              <tr key={name} data-chosen={load === chosen ? 'true' : undefined}>
                <th scope="row">{name}</th>
                <td class="wl-figure">{load ? loadWords(load.load, input.show) : said.none}</td>
                <td>
                  {load ? plateWords(sideOf(load)) || said.nothing : ''}
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
          <h2 class="wl-heading">{said.from(loadWords(change.from.load, input.show))}</h2>
          <StepList steps={change.steps} />
        </section>
      )}
    </>
  );
}

function StepList({ steps }: { readonly steps: readonly HandlingStep[] }) {
  if (steps.length === 0) return <p>{said.isOn}</p>;
  return (
    <ol class="wl-steps">
      {steps.map((step, place) => (
        <li key={place}>
          {step.action === 'take-off' && said.takeOff(pieceWords(step.plate.weight), step.place)}
          {step.action === 'put-on' && said.putOn(pieceWords(step.plate.weight), step.place)}
        </li>
      ))}
    </ol>
  );
}
