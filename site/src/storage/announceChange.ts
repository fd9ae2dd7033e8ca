const CHANNEL = 'windlass-changes';

/** Tells every part of every open page that the database has changed. */
export function announceChange(): void {
  if (typeof BroadcastChannel === 'undefined') return;
  const channel = new BroadcastChannel(CHANNEL);
  channel.postMessage('changed');
  channel.close();
}

/** Calls back when the database was changed, in this tab or another. Returns how to stop it. */
export function onChange(listener: () => void): () => void {
  if (typeof BroadcastChannel === 'undefined') return () => {};
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = listener;
  return () => channel.close();
}
