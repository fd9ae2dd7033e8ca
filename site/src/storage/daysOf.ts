/** The keys of a client's sessions in the index by day, whatever their day. */
export function daysOf(clientId: string): IDBKeyRange {
  return IDBKeyRange.bound([clientId], [clientId, []]);
}
