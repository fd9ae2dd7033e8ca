import type { NoAnswer, ShownResult } from '../contract/Answer.ts';
import { words } from '../words.ts';
import { BandLine } from './BandLine.tsx';
import { kept } from './kept.ts';

interface ResultHeadProps {
  /** `null` where the result stands that the page was served with. */
  readonly shown: ShownResult | NoAnswer | null;
  /** The result is of an earlier input, because the present one cannot be read. */
  readonly isOld: boolean;
}

/** The number, its unit small beside it, its band under it. Every line keeps its place. */
export function ResultHead({ shown, isOld }: ResultHeadProps) {
  if (shown === null) return <div class="wl-head" role="status" {...kept} />;
  return (
    <div class="wl-head" role="status" data-old={isOld ? 'true' : undefined}>
      <p class="wl-head-label">
        {shown.kind === 'result' ? shown.headline.label : (shown.label ?? words.result.none)}
      </p>
      {shown.kind === 'result' ? (
        <p class={shown.headline.isName ? 'wl-number wl-name' : 'wl-number'}>
          <Value value={shown.headline.value} />{' '}
          <span class="wl-value-unit">{shown.headline.unit}</span>{' '}
          {isOld ? <OldMark /> : <span class="wl-also">{shown.headline.also}</span>}
        </p>
      ) : (
        <p class="wl-number wl-no-number">
          <span>{shown.headline}</span>
          {isOld && <OldMark />}
        </p>
      )}
      {shown.kind === 'result' ? (
        <BandLine certainty={shown.certainty} />
      ) : (
        <p class="wl-band">{shown.message}</p>
      )}
    </div>
  );
}

function OldMark() {
  return (
    <span class="wl-old">
      {words.result.old}
      <span class="wl-unseen">{words.result.oldMeans}</span>
    </span>
  );
}

/** The number; a mark of rounding before it stands small, so that figures keep their place. */
function Value({ value }: { readonly value: string }) {
  const isRounded = value.startsWith('≈');
  return (
    <span class="wl-value">
      {isRounded && <span class="wl-rounded">≈</span>}
      {isRounded ? value.slice(1) : value}
    </span>
  );
}
