import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { OtherParameters } from '../address/encodeAddress.ts';
import type { NoAnswer, ShownResult } from '../contract/Answer.ts';
import { handOver, type ServedPart } from './below/handOver.ts';
import { below } from './below/words.ts';
import { CautionStrip } from './CautionStrip.tsx';
import { CodeBlock } from './CodeBlock.tsx';
import { CopyButton } from './CopyButton.tsx';
import { SourceList } from './SourceList.tsx';
import { WhyPanel } from './WhyPanel.tsx';

interface MoreProps {
  /** What the page was served with, where this takes its place. */
  readonly served: ServedPart | null;
  readonly shown: ShownResult | NoAnswer;
  readonly others: OtherParameters;
  readonly tools: string | null;
  /** Address of this calculator and its state, inside `tools`. */
  readonly ownLink: string;
  /** The ways on, where they are not shown beside the answer. */
  readonly next: ComponentChildren;
}

/** All that follows from a result: cautions, details, reasons, ways on, and the same as code. */
export function More({ served, shown, others, tools, ownLink, next }: MoreProps) {
  const element = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    if (served && element.current) handOver(served, element.current);
  }, []);
  return (
    <div class="wl-more" ref={element}>
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
