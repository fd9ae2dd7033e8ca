import type { LiftReview, StrengthTrend } from '@windlass/core/progress';
import { formatChance } from '../ui/formatChance.ts';
import { formatDate } from '../ui/formatDate.ts';
import type { LogReviewResult } from './compute.ts';
import { liftName } from './liftName.ts';
import { rateWords } from './view.tsx';
import { said } from './words.ts';

const MOST_LIFTS = 40;

/** Every lift of the log: when it was trained last, and where it is going. */
export function LiftsPanel({ result: { review } }: { readonly result: LogReviewResult }) {
  const rest = review.lifts.length - MOST_LIFTS;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.lifts}</h2>
      <table class="wl-table">
        <thead>
          <tr>
            <th scope="col">{said.liftColumns.lift}</th>
            <th scope="col">{said.liftColumns.trend}</th>
          </tr>
        </thead>
        <tbody>
          {review.lifts.slice(0, MOST_LIFTS).map((one) => (
            <LiftRow key={one.exercise} one={one} />
          ))}
        </tbody>
      </table>
      {rest > 0 && <p>{said.moreLifts(rest)}</p>}
      <p class="wl-soft">{said.liftsNote}</p>
    </section>
  );
}

function LiftRow({ one }: { readonly one: LiftReview }) {
  const { exercise, sessions, setAside, last, daysSinceLast, lately, leftOut } = one;
  return (
    <tr>
      <th scope="row">
        {liftName(exercise)}
        <span class="wl-row-note">
          {said.sessions(sessions, setAside, formatDate(last.date), daysSinceLast)}
        </span>
        {leftOut.length > 0 && <span class="wl-row-note">{said.leftOut(leftOut.length)}</span>}
      </th>
      <td>{lately.kind === 'trend' ? <Trend trend={lately} /> : said.noLately}</td>
    </tr>
  );
}

function Trend({ trend }: { readonly trend: StrengthTrend }) {
  const rising = formatChance(trend.chanceRising);
  return (
    <>
      {rateWords(trend.percentPerWeek)}
      <span class="wl-row-note">{said.rising(rising)}</span>
    </>
  );
}
