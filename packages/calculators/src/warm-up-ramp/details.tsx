import { weightOfBar } from '../shared/barFields.ts';
import { changeWords, newPerSide } from '../shared/changeWords.ts';
import { loadingWords } from '../shared/loadingWords.ts';
import { loadWords, pieceWords } from '../shared/loadWords.ts';
import { drawnPlates } from '../shared/plateWords.ts';
import { sideOf } from '../shared/sideOf.ts';
import { BarDrawing } from '../ui/BarDrawing.tsx';
import { formatNumber } from '../ui/formatNumber.ts';
import { words } from '../words.ts';
import type { RampInput, RampResult } from './compute.ts';
import { RampCapacity } from './RampCapacity.tsx';
import { type RampSet, setsOf } from './setsOf.ts';
import { said } from './words.ts';

interface RampDetailsProps {
  readonly input: RampInput;
  readonly result: RampResult;
}

/** Every set with what the hands do for it, and what the ramp costs. */
export function RampDetails({ input, result }: RampDetailsProps) {
  const { plan } = result;
  return (
    <>
      <section class="wl-panel">
        <h2 class="wl-heading">{said.setBySet}</h2>
        <ol class="wl-ramp-steps">
          {setsOf(result).map((set) => (
            <SetRow key={set.load.load} set={set} input={input} />
          ))}
        </ol>
        <p>
          {said.afterwards(
            changeWords(plan.stripDown),
            plan.piecesHandled,
            formatNumber(plan.minutes, 0),
          )}
        </p>
      </section>
      {plan.aboveWork.kind === 'left-out' && (
        <section class="wl-panel">
          <h2 class="wl-heading">{said.leftOut}</h2>
          <ul class="wl-sources">
            {plan.aboveWork.conditions
              .filter(({ met }) => !met)
              .map(({ id, message }) => (
                <li key={id}>{message}</li>
              ))}
          </ul>
        </section>
      )}
      <section class="wl-panel">
        <h2 class="wl-heading">{said.cost}</h2>
        <RampCapacity result={result} />
        <p class="wl-soft">{said.costIs}</p>
      </section>
    </>
  );
}

function SetRow({ set, input }: { readonly set: RampSet; readonly input: RampInput }) {
  const { name, load, reps, change, restSeconds } = set;
  const side = sideOf(load);
  return (
    <li class="wl-ramp-step">
      <div class="wl-ramp-words">
        <p class="wl-ramp-load">
          {loadWords(load.shown, input.show)} {reps === null ? '' : words.ramp.times(reps)}
        </p>
        <p>
          {change.steps.length > 0 && <strong>{changeWords(change)}: </strong>}
          {loadingWords(load)}. {restSeconds !== null && said.rest(formatNumber(restSeconds, 0))}
        </p>
        <p class="wl-soft">{said.names[name]}</p>
      </div>
      {load.loading.kind === 'plates' && (
        <BarDrawing
          plates={drawnPlates(side, newPerSide(change))}
          barLabel={pieceWords(weightOfBar(input))}
          says={said.bar(loadWords(load.shown, input.show), loadingWords(load))}
        />
      )}
    </li>
  );
}
