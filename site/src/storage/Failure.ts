/** Why the browser did not do what was asked. Nothing was written then. */
export interface Failure {
  readonly kind: 'failed';
  /**
   * `denied`: the browser lets this page keep nothing. `full`: there is no room. `blocked`: another
   * tab holds an older database open. `newer`: the database was made by a newer page. `closed`: the
   * database was closed under way. `other`: anything else.
   */
  readonly reason: 'denied' | 'full' | 'blocked' | 'newer' | 'closed' | 'other';
  /** What the browser said. */
  readonly detail: string;
}

const reasons: Readonly<Record<string, Failure['reason']>> = {
  SecurityError: 'denied',
  NotAllowedError: 'denied',
  QuotaExceededError: 'full',
  VersionError: 'newer',
  InvalidStateError: 'closed',
};

/** The failure that an exception of the browser's database stands for. */
export function failureOf(error: unknown): Failure {
  const { name, message } = error instanceof Error ? error : new Error(String(error));
  const reason = Object.hasOwn(reasons, name) ? reasons[name] : undefined;
  return { kind: 'failed', reason: reason ?? 'other', detail: `${name}: ${message}` };
}
