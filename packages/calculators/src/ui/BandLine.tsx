import type { Certainty } from '../contract/Answer.ts';
import { words } from '../words.ts';
import { formatNumber } from './formatNumber.ts';

/** The band under a number, or why there is none. */
export function BandLine({ certainty }: { readonly certainty: Certainty }) {
  if (certainty.kind === 'exact') return <p class="wl-band">{certainty.says}</p>;
  const { band, unit, says } = certainty;
  return (
    <p class="wl-band">
      <strong class="wl-band-ends">
        {words.result.band(
          formatNumber(band.low, 1),
          formatNumber(band.high, 1),
          unit,
          formatNumber(band.level * 10, 1),
        )}
      </strong>{' '}
      {says}
    </p>
  );
}
