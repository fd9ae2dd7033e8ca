import { inDecimals } from '../../basis/index.ts';
import type { LiftSession } from '../LiftSession.ts';
import { progressRules } from '../ProgressRules.ts';
import { topSets } from '../topSets.ts';
import type { StallCause } from './StallCause.ts';

/** What is known for finding causes. */
export interface CauseQuestion {
  readonly sessions: readonly LiftSession[];
  readonly hoursNeeded?: number | undefined;
}

type Finding = Pick<StallCause, 'standing' | 'says'>;

interface LogCause extends Pick<StallCause, 'id' | 'test'> {
  /** What the log says of it; nothing where it holds too little. */
  readonly find: (question: CauseQuestion) => Finding | undefined;
}

/** Causes that a log can show or rule out. */
export const logCauses: readonly LogCause[] = [
  {
    id: 'too-soon',
    test: 'One more day between sessions for three sessions: are the first sets better?',
    find: ({ sessions, hoursNeeded }) => {
      const late = sessions.slice(-4);
      const gaps = late.slice(1).map(({ day }, i) => 24 * (day - (late[i]?.day ?? day)));
      if (gaps.length === 0 || hoursNeeded === undefined) return undefined;
      const shortest = Math.min(...gaps);
      return shortest < hoursNeeded
        ? shown(
            `Some sessions lie ${shortest} hours apart; the muscles likely ask for ${Math.round(hoursNeeded)}.`,
          )
        : ruledOut('The sessions lie far enough apart.');
    },
  },
  {
    id: 'large-step',
    test: 'Go back to the load before and take half the step, or repetitions first.',
    find: ({ sessions }) => {
      const loads = sessions.map((session) => topSets(session).load);
      const last = loads.at(-1) ?? 0;
      const before = loads.findLast((load) => load < last) ?? 0;
      if (before <= 0) return undefined;
      const percent = (100 * (last - before)) / before;
      return percent > progressRules.stepPercent.largest
        ? shown(`The last step up was ${inDecimals(percent, 0)} %.`)
        : ruledOut(`The last step up was ${inDecimals(percent, 0)} %, an ordinary one.`);
    },
  },
  {
    id: 'shorter-rests',
    test: 'The old rests for two sessions: are the later sets better?',
    find: ({ sessions }) => {
      const { before, now } = beforeAndNow(sessions, (session) => {
        const rests = topSets(session).sets.slice(1);
        const known = rests.flatMap(({ restSeconds }) => restSeconds ?? []);
        return known.length === 0 ? undefined : Math.min(...known);
      });
      if (before === undefined || now === undefined) return undefined;
      return now < 0.75 * before
        ? shown(`Rests fell from ${Math.round(before)} to ${Math.round(now)} seconds.`)
        : ruledOut('The rests are as long as before.');
    },
  },
  {
    id: 'other-tempo',
    test: 'The old tempo for one session; slower repetitions are fewer.',
    find: ({ sessions }) => {
      const tempos = sessions.flatMap((session) => topSets(session).sets[0].tempo ?? []);
      if (tempos.length < 2) return undefined;
      const last = tempos.at(-1);
      return tempos.every((tempo) => tempo === last)
        ? ruledOut('The tempo is the same throughout.')
        : shown(`The tempo is ${last} now and was another before.`);
    },
  },
  {
    id: 'work-changed',
    test: 'The old number of sets for three weeks: more sets cost recovery, fewer may be too few.',
    find: ({ sessions }) => {
      const { before, now } = beforeAndNow(sessions, ({ sets }) => sets.length);
      if (before === undefined || now === undefined) return undefined;
      return Math.abs(now - before) >= 1
        ? shown(`Sets a session went from ${inDecimals(before, 1)} to ${inDecimals(now, 1)}.`)
        : ruledOut('The number of sets is as before.');
    },
  },
];

function shown(says: string): Finding {
  return { standing: 'in-the-log', says };
}

function ruledOut(says: string): Finding {
  return { standing: 'not-in-the-log', says };
}

/** Means of a figure over the sessions before the last three, and over the last three. */
function beforeAndNow(
  sessions: readonly LiftSession[],
  read: (session: LiftSession) => number | undefined,
): { readonly before: number | undefined; readonly now: number | undefined } {
  const mean = (list: readonly LiftSession[]) => {
    const values = list.flatMap((session) => read(session) ?? []);
    return values.length === 0
      ? undefined
      : values.reduce((sum, value) => sum + value, 0) / values.length;
  };
  return { before: mean(sessions.slice(0, -3)), now: mean(sessions.slice(-3)) };
}
