/** A calendar question for a general solver: starts in minutes with their day and week. */
export interface MipQuestion {
  readonly starts: readonly { readonly at: number; readonly day: number; readonly week: number }[];
  /** `pauses[a][b]`: minutes from a start of session a until one of session b. */
  readonly pauses: readonly (readonly number[])[];
  readonly perWeek: number;
  readonly order: 'as-listed' | 'any-in-round';
}

/**
 * The largest number of sessions as an integer program in LP format: one 0-1 variable for each start
 * and session; pairs that come too soon exclude each other; no session runs ahead of another by
 * more than one round.
 */
export function calendarProgram(question: MipQuestion): string {
  const { starts, pauses, perWeek, order } = question;
  const sessions = pauses.map((_, session) => session);
  const name = (start: number, session: number) => `x${start}_${session}`;
  const all = starts.flatMap((_, i) => sessions.map((session) => name(i, session)));
  const rows: string[] = [];
  const atMost = (names: readonly string[], limit: number) =>
    rows.push(`${names.join(' + ')} <= ${limit}`);
  for (const key of ['day', 'week'] as const) {
    for (const value of new Set(starts.map((start) => start[key]))) {
      const within = starts.flatMap((start, i) =>
        start[key] === value ? sessions.map((session) => name(i, session)) : [],
      );
      atMost(within, key === 'day' ? 1 : perWeek);
    }
  }
  for (const [i, first] of starts.entries()) {
    for (const [j, second] of starts.entries()) {
      if (j <= i) continue;
      for (const a of sessions) {
        for (const b of sessions) {
          if (second.at - first.at < (pauses[a]?.[b] ?? 0)) atMost([name(i, a), name(j, b)], 1);
        }
      }
    }
    for (const a of sessions) {
      for (const b of sessions) {
        if (a === b) continue;
        const upTo = (session: number) => starts.slice(0, i + 1).map((_, k) => name(k, session));
        const lead = order === 'as-listed' && b < a ? 0 : 1;
        rows.push(`${upTo(a).join(' + ')} - ${upTo(b).join(' - ')} <= ${lead}`);
      }
    }
  }
  return `Maximize\n obj: ${all.join(' + ')}\nSubject To\n${rows
    .map((row, i) => ` c${i}: ${row}`)
    .join('\n')}\nBinary\n ${all.join(' ')}\nEnd`;
}
