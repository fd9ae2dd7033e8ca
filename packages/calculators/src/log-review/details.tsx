import type { LogReviewResult } from './compute.ts';
import { DosePanel } from './DosePanel.tsx';
import type { LogReviewInput } from './fields.ts';
import { LastTimePanel } from './LastTimePanel.tsx';
import { LiftsPanel } from './LiftsPanel.tsx';
import { NextPanel } from './NextPanel.tsx';
import { SavePanel } from './SavePanel.tsx';
import { StallPanel } from './StallPanel.tsx';
import { UnreadPanel } from './UnreadPanel.tsx';

interface LogReviewDetailsProps {
  readonly input: LogReviewInput;
  readonly result: LogReviewResult;
}

/** Rows not read, the next session, the last one, standing still, all lifts, and the sets of each muscle. */
export function LogReviewDetails({ input, result }: LogReviewDetailsProps) {
  return (
    <>
      <UnreadPanel unread={result.log.unread} />
      <NextPanel input={input} result={result} />
      <LastTimePanel input={input} result={result} />
      <StallPanel input={input} result={result} />
      <LiftsPanel result={result} />
      <DosePanel result={result} on={input.on} />
      <SavePanel sets={result.log.sets} />
    </>
  );
}
