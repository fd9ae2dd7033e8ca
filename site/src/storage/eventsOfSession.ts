/** The keys of all events of a running session. */
export function eventsOfSession(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id, 0], [id, Number.POSITIVE_INFINITY]);
}
