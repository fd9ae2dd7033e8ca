import { liveSetRecord } from '@windlass/core/extension';
import type { StopRule } from '@windlass/core/safety';
import { CopyButton } from '../../ui/CopyButton.tsx';
import { formatNumber } from '../../ui/formatNumber.ts';
import { words } from '../../words.ts';
import { said } from '../words.ts';
import { dateToday, dayOf } from './clock.ts';
import { live } from './liveWords.ts';
import { logRow } from './logRow.ts';
import type { RunningSet } from './savedSet.ts';

interface LiveRecordProps {
  readonly running: RunningSet;
  readonly rules: readonly StopRule[];
}

/** What a finished set leaves behind: how it ended, every stage with its seconds, the row for a log. */
export function LiveRecord({ running, rules }: LiveRecordProps) {
  const date = dateToday();
  const record = liveSetRecord(running.set, dayOf(date));
  if (record.kind === 'open') return null;
  const { end, signs, stages, secondsUnderLoad, performed } = record;
  const ruleOf = (id: string) => rules.find((rule) => rule.id === id);
  const endedBy = end.by === 'stop-rule' ? ruleOf(end.rule) : undefined;
  const shown = [...new Set([...(endedBy ? [endedBy.id] : []), ...signs])];
  return (
    <div class="wl-live-record">
      <h2 class="wl-heading">{live.record}</h2>
      <p>
        <strong>{live.ended(end, endedBy?.sign)}</strong>
      </p>
      {shown.flatMap((id) => {
        const rule = ruleOf(id);
        if (!rule) return [];
        return [
          <p key={id} class="wl-live-warning">
            {rule.sign}: {rule.action}{' '}
            {rule.ask.length > 0 &&
              words.cautions.ask(rule.ask.map((one) => words.cautions.advisers[one]))}
          </p>,
        ];
      })}
      <table class="wl-table">
        <thead>
          <tr>
            <th scope="col">{live.recordStage}</th>
            <th scope="col">{live.recordSeconds}</th>
          </tr>
        </thead>
        <tbody>
          {stages.map(({ stage, seconds, failed }, place) => (
            <tr key={place}>
              <th scope="row">{said.stageNames[stage.kind]}</th>
              <td>
                {seconds.length === 0 ? live.none : live.each(seconds)}
                {failed && <span class="wl-row-note">{live.failed}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{live.underLoad(formatNumber(secondsUnderLoad, 1))}</p>
      <p class="wl-soft">{performed ? live.learned(performed.reps) : live.nothingLearned}</p>
      <div class="wl-actions">
        {performed && (
          <CopyButton label={live.copyRow} text={() => logRow(running, performed, date)} />
        )}
        <CopyButton label={live.copyAll} text={() => JSON.stringify(record, null, 2)} />
      </div>
    </div>
  );
}
