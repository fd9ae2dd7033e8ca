import type { ToneName } from './Sound.ts';

interface Partial {
  readonly hertz: number;
  readonly fromSeconds: number;
  readonly seconds: number;
  /** Of full scale, 0 to 1. */
  readonly level: number;
}

const beep = (hertz: number, seconds: number, level = 0.5, fromSeconds = 0): Partial => ({
  hertz,
  fromSeconds,
  seconds,
  level,
});

/** Up is high, down is low, a pause lies between; seconds inside a phase are short and soft. */
const tones: Readonly<Record<ToneName, readonly Partial[]>> = {
  'lead-in': [beep(660, 0.09)],
  lift: [beep(988, 0.16)],
  lower: [beep(392, 0.2, 0.65)],
  pause: [beep(587, 0.08, 0.4)],
  second: [beep(1319, 0.03, 0.2)],
  window: [beep(1976, 0.12, 0.25)],
  end: [beep(784, 0.12), beep(784, 0.12, 0.5, 0.17), beep(784, 0.25, 0.5, 0.34)],
  'rest-near': [beep(523, 0.09, 0.4)],
  'rest-over': [beep(523, 0.14), beep(659, 0.14, 0.5, 0.16), beep(784, 0.35, 0.5, 0.32)],
};

const ATTACK_SECONDS = 0.003;

/** A tone as samples from -1 to 1: sines that begin within 3 ms and die away. */
export function toneSamples(name: ToneName, sampleRate: number): Float32Array<ArrayBuffer> {
  const partials = tones[name];
  const ends = partials.map(({ fromSeconds, seconds }) => fromSeconds + seconds);
  const samples = new Float32Array(Math.ceil(Math.max(...ends) * sampleRate));
  for (const { hertz, fromSeconds, seconds, level } of partials) {
    const first = Math.round(fromSeconds * sampleRate);
    for (let place = 0; place < Math.floor(seconds * sampleRate); place++) {
      const time = place / sampleRate;
      const rise = Math.min(1, time / ATTACK_SECONDS);
      const fall = 1 - time / seconds;
      const at = first + place;
      samples[at] = (samples[at] ?? 0) + level * rise * fall * Math.sin(2 * Math.PI * hertz * time);
    }
  }
  return samples;
}
