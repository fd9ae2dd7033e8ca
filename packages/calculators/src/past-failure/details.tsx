import { chainNeeds, type StageForecast } from '@windlass/core/extension';
import { formatChance } from '../ui/formatChance.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { formatPercent } from '../ui/formatPercent.ts';
import { below } from './below/words.ts';
import type { ChainResult } from './compute.ts';
import { amountOf } from './view.tsx';
import { said } from './words.ts';

/** Every stage with its bands, what has to be there, what ends the set, what it costs. */
export function ChainDetails({ result }: { readonly result: ChainResult }) {
  const { forecast, stages, exercise, stopRules } = result;
  const needs = chainNeeds(stages, exercise);
  const { hardSets, parts } = forecast.dose;
  return (
    <>
      <section class="wl-panel">
        <h2 class="wl-heading">{below.byStage}</h2>
        <table class="wl-table">
          <thead>
            <tr>
              <th scope="col">{below.columns.stage}</th>
              <th scope="col" class="wl-figure">
                {below.columns.count}
              </th>
              <th scope="col" class="wl-figure">
                {below.columns.seconds}
              </th>
              <th scope="col" class="wl-figure">
                {below.columns.left}
              </th>
            </tr>
          </thead>
          <tbody>
            {forecast.stages.map((stage, place) => (
              <StageRow key={place} forecast={stage} />
            ))}
          </tbody>
        </table>
        <p class="wl-soft">{below.tableSays}</p>
      </section>
      {needs.length > 0 && (
        <section class="wl-panel">
          <h2 class="wl-heading">{below.needs}</h2>
          <ul class="wl-sources">
            {needs.map((need) => (
              <li key={`${need.kind} ${need.stage}`}>{need.words}</li>
            ))}
          </ul>
        </section>
      )}
      <section class="wl-panel">
        <h2 class="wl-heading">{below.stop}</h2>
        <StopList rules={stopRules.filter(({ when }) => when === 'during')} />
        <h3>{below.afterwards}</h3>
        <StopList rules={stopRules.filter(({ when }) => when === 'after')} />
      </section>
      <section class="wl-panel">
        <h2 class="wl-heading">{below.cost}</h2>
        <p>{below.costSays(formatNumber(hardSets))}</p>
        <p class="wl-soft">
          {parts
            .map((part) => below.costPart(said.stageNames[part.kind], formatNumber(part.hardSets)))
            .join(' + ')}
        </p>
      </section>
    </>
  );
}

function StopList({ rules }: { readonly rules: ChainResult['stopRules'] }) {
  return (
    <ul class="wl-sources">
      {rules.map(({ id, sign, action }) => (
        <li key={id}>
          <strong>{sign}.</strong> {action}
        </li>
      ))}
    </ul>
  );
}

function StageRow({ forecast }: { readonly forecast: StageForecast }) {
  const { stage, secondsUnderLoad, capacityLeft, chanceOfNone, help = [] } = forecast;
  const notes = [
    ...(chanceOfNone >= 0.05 ? [below.none(formatChance(chanceOfNone))] : []),
    ...(help.length > 0 ? [below.help(help.map(({ likely }) => formatPercent(likely)))] : []),
  ];
  return (
    <tr>
      <th scope="row">
        {said.chain([said.stage(stage)])}
        {notes.length > 0 && <span class="wl-row-note">{notes.join(' ')}</span>}
      </th>
      <BandCell band={amountOf(forecast)} unit={stage.kind === 'hold' ? 's' : ''} />
      <BandCell band={secondsUnderLoad} unit="s" />
      <td class="wl-figure">{formatPercent(capacityLeft.likely)}</td>
    </tr>
  );
}

interface BandCellProps {
  readonly band: ReturnType<typeof amountOf>;
  readonly unit: string;
}

function BandCell({ band: { low, likely, high }, unit }: BandCellProps) {
  const figure = (value: number) => formatNumber(value, 0);
  return (
    <td class="wl-figure">
      {`${figure(likely)} ${unit}`.trim()}
      <span class="wl-row-note">{said.span(figure(low), figure(high))}</span>
    </td>
  );
}
