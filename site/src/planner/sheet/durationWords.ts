import { words } from '../words.ts';

/** `45 s`, `2 min 30 s`: seconds as a clock on the wall shows them; up to 90 s they stay seconds. */
export function durationWords(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole <= 90) return words.duration(0, whole);
  return words.duration(Math.floor(whole / 60), whole % 60);
}
