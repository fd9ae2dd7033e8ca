/** Readings older than this, in milliseconds, say nothing of now. */
const FRESH = 10_000;

/**
 * How many milliseconds the clock of `now` is ahead of the audio clock, for the sound that is heard.
 *
 * The output's own time stamp counts the way to the loudspeaker, too. Where a browser has none, the
 * audio clock is read: it stands still for the length of a block, so the least of the last readings
 * is the nearest.
 */
export function audioOffset(context: AudioContext, now: () => number): () => number {
  let readings: readonly { readonly time: number; readonly offset: number }[] = [];
  return () => {
    const time = now();
    const { contextTime = 0, performanceTime = 0 } = context.getOutputTimestamp?.() ?? {};
    if (contextTime > 0 && performanceTime > 0) {
      return time - performance.now() + performanceTime - contextTime * 1000;
    }
    readings = [
      ...readings.filter((one) => time - one.time < FRESH),
      { time, offset: time - context.currentTime * 1000 },
    ];
    return Math.min(...readings.map(({ offset }) => offset));
  };
}
