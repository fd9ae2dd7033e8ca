import type { ExchangeReason, Suggestion } from '@windlass/core/exchange';
import { below } from './below/words.ts';
import type { ExchangeResult } from './compute.ts';
import { LeftOutList } from './LeftOutList.tsx';
import { nameOf } from './nameOf.ts';

/** Why it cannot stay, every option with its reasons, what was left out, what to ask, when to stop. */
export function ExchangeDetails({ result }: { readonly result: ExchangeResult }) {
  const { exercise, options, setUps, others } = result;
  const against = 'against' in options ? options.against : [];
  const keeps = exercise !== null && against.length === 0;
  const heading = exercise === null ? below.suggestions : keeps ? below.keepOthers : below.others;
  return (
    <>
      <Reasons heading={below.against} reasons={against} />
      <Options heading={below.setUps} options={setUps} />
      <Options heading={heading} options={others} />
      <Reasons heading={below.notes} reasons={options.notes} />
      <section class="wl-panel">
        <h2 class="wl-heading">{below.stop}</h2>
        <ul class="wl-sources">
          {options.stop.map(({ id, sign, action }) => (
            <li key={id}>{below.stopRule(sign, action)}</li>
          ))}
        </ul>
      </section>
      <LeftOutList leftOut={options.leftOut} />
      {options.askAbout.length > 0 && (
        <section class="wl-panel">
          <h2 class="wl-heading">{below.askAbout}</h2>
          <p>{below.askAboutSays(options.askAbout)}</p>
        </section>
      )}
    </>
  );
}

interface ReasonsProps {
  readonly heading: string;
  readonly reasons: readonly ExchangeReason[];
}

function Reasons({ heading, reasons }: ReasonsProps) {
  if (reasons.length === 0) return null;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{heading}</h2>
      <ul class="wl-sources">
        {reasons.map(({ code, words }) => (
          <li key={`${code} ${words}`}>{words}</li>
        ))}
      </ul>
    </section>
  );
}

interface OptionsProps {
  readonly heading: string;
  readonly options: readonly Suggestion[];
}

function Options({ heading, options }: OptionsProps) {
  if (options.length === 0) return null;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{heading}</h2>
      <ol class="wl-options">
        {options.map((option) => (
          <li key={nameOf(option)}>
            <h3>{nameOf(option)}</h3>
            <dl>
              <ReasonGroup name={below.forIt} reasons={option.reasonsFor} />
              <ReasonGroup name={below.againstIt} reasons={option.reasonsAgainst} />
            </dl>
            {option.alsoPossible.length > 0 && (
              <p class="wl-soft">{below.also(option.alsoPossible.map(({ name }) => name))}</p>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

function ReasonGroup({
  name,
  reasons,
}: {
  readonly name: string;
  readonly reasons: readonly ExchangeReason[];
}) {
  if (reasons.length === 0) return null;
  return (
    <>
      <dt>{name}</dt>
      <dd>{reasons.map(({ words }) => words).join(' ')}</dd>
    </>
  );
}
