/** `1:48`, `0:07`, as a clock on the wall counts down; hours count into the minutes. */
export function clockWords(seconds: number): string {
  const whole = Math.max(0, Math.ceil(seconds - 0.001));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** `18:02`, the time of day of a moment. */
export function timeWords(at: number): string {
  const time = new Date(at);
  return `${time.getHours()}:${String(time.getMinutes()).padStart(2, '0')}`;
}
