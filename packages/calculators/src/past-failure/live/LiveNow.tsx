import type { LiveStanding } from '@windlass/core/extension';
import { formatNumber } from '../../ui/formatNumber.ts';
import { said } from '../words.ts';
import { live } from './liveWords.ts';
import { nextMoves } from './nextMoves.ts';
import type { LiveSetControl } from './useLiveSet.ts';

/** What is being done, its figure as large as the screen allows, and what was asked for. */
export function LiveNow({ control }: { readonly control: LiveSetControl }) {
  const { standing, due } = control;
  const { figure, unit, note } = nowOf(control);
  const warning = due ? live.due[due.rule] : standing.control ? live.control(standing.control) : '';
  return (
    <div class="wl-live-now" data-phase={standing.phase}>
      <p class="wl-live-phase" aria-live="polite">
        {live.phases[standing.phase]}
      </p>
      <p class="wl-live-figure">
        {figure} <span class="wl-live-unit">{unit}</span>
      </p>
      <p class="wl-live-note">{note}</p>
      <p class="wl-live-warning" role="alert">
        {warning}
      </p>
    </div>
  );
}

interface Now {
  readonly figure: string;
  readonly unit: string;
  readonly note: string;
}

function nowOf(control: LiveSetControl): Now {
  const { running, standing, now } = control;
  const { plan } = running.set;
  const since = Math.max(0, now - standing.since);
  switch (standing.phase) {
    case 'ready':
      return { figure: '0', unit: live.reps(0), note: live.whenReady(plan.stages.map(said.stage)) };
    case 'lifting':
      return liftingNow(standing, since);
    case 'holding':
    case 'lowering':
      return { figure: formatNumber(since, 0), unit: live.seconds, note: carryingNote(standing) };
    case 'between':
    case 'ended': {
      const [next] = nextMoves(running.set, standing);
      const note = next ? live.goOn(next.stage) : live.nothingNext;
      return { figure: formatNumber(now - standing.lastAt, 0), unit: live.seconds, note };
    }
  }
}

function liftingNow({ stages }: LiveStanding, since: number): Now {
  const { seconds, askedSeconds } = stages.at(-1) ?? { seconds: [], askedSeconds: null };
  return {
    figure: String(seconds.length),
    unit: live.reps(seconds.length),
    note: live.paced(since, askedSeconds ?? 0),
  };
}

function carryingNote({ stages }: LiveStanding): string {
  const done = stages.at(-1);
  if (done?.stage.kind === 'hold') return live.atMost(done.stage.maxSeconds);
  if (done?.stage.kind !== 'lower') return '';
  const { maxLowerings, secondsEach } = done.stage;
  return live.lowering(done.seconds.length + 1, maxLowerings, secondsEach);
}
