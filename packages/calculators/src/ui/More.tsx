import type { ComponentChildren } from 'preact';
import type { OtherParameters } from '../address/encodeAddress.ts';
import type { NoAnswer, ShownResult } from '../contract/Answer.ts';
import { below } from './below/words.ts';
import { CautionStrip } from './CautionStrip.tsx';
import { CodeBlock } from './CodeBlock.tsx';
import { CopyButton } from './CopyButton.tsx';
import { SourceList } from './SourceList.tsx';
import { WhyPanel } from './WhyPanel.tsx';

interface MoreProps {
  readonly shown: ShownResult | NoAnswer;
  readonly others: OtherParameters;
  readonly tools: string | null;
  /** Address of this calculator and its state, inside `tools`. */
  readonly ownLink: string;
  /** The ways on, where they are not shown beside the answer. */
  readonly next: ComponentChildren;
}

/** All that follows from a result: cautions, details, reasons, ways on, and the same as code. */
export function More({ shown, others, tools, ownLink, next }: MoreProps) {
  return (
    <div class="wl-more">
      {others.length > 0 && (
        <p class="wl-notice" role="note">
          {below.unknown([...new Set(others.map(([name]) => name))].join(', '))}
        </p>
      )}
      <CautionStrip cautions={shown.cautions ?? []} />
      {shown.details?.()}
      {next}
      <div class="wl-actions wl-no-print">
        {tools !== null && (
          <CopyButton
            label={below.copyLink}
            text={() => new URL(`${tools}${ownLink}`, document.baseURI).href}
          />
        )}
        <button type="button" class="wl-button" onClick={() => window.print()}>
          {below.print}
        </button>
      </div>
      {shown.kind === 'result' && <WhyPanel why={shown.why} />}
      {shown.kind === 'result' && <CodeBlock code={shown.snippet} />}
      <SourceList sources={shown.sources ?? []} />
    </div>
  );
}
