import type { ToneName } from './Sound.ts';
import { toneSamples } from './tones.ts';

const made = new WeakMap<BaseAudioContext, Map<ToneName, AudioBuffer>>();

/** Lets a tone sound at a second of the context's own clock, exact to the sample. */
export function scheduleTone(
  context: BaseAudioContext,
  tone: ToneName,
  atSeconds: number,
): AudioScheduledSourceNode {
  const source = context.createBufferSource();
  source.buffer = bufferOf(context, tone);
  source.connect(context.destination);
  source.start(atSeconds);
  return source;
}

function bufferOf(context: BaseAudioContext, tone: ToneName): AudioBuffer {
  const buffers = made.get(context) ?? new Map<ToneName, AudioBuffer>();
  made.set(context, buffers);
  const known = buffers.get(tone);
  if (known) return known;
  const samples = toneSamples(tone, context.sampleRate);
  const buffer = context.createBuffer(1, samples.length, context.sampleRate);
  buffer.copyToChannel(samples, 0);
  buffers.set(tone, buffer);
  return buffer;
}
