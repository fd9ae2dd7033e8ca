import type { CueTrack } from './cueTrack.ts';
import { scheduleTone } from './scheduleTone.ts';
import { writeWav } from './writeWav.ts';

/** Enough for tones below 2 kHz; a minute takes 1.9 MB. */
const SAMPLE_RATE = 16_000;

/** A track as a WAV file, rendered faster than it sounds. */
export async function renderTrack({ sounds, seconds }: CueTrack): Promise<Uint8Array<ArrayBuffer>> {
  const context = new OfflineAudioContext(1, Math.ceil(seconds * SAMPLE_RATE), SAMPLE_RATE);
  for (const { tone, atSeconds } of sounds) scheduleTone(context, tone, atSeconds);
  const rendered = await context.startRendering();
  return writeWav(rendered.getChannelData(0), SAMPLE_RATE);
}
