/** Louder than this, of full scale, is a sound. */
const LOUD = 0.03;
/** So many seconds of silence end a sound. */
const SILENCE = 0.03;

/** When each sound of a WAV file begins, in seconds: one channel of 16-bit samples. */
export function onsets(file: Buffer): readonly number[] {
  const rate = file.readUInt32LE(24);
  const found: number[] = [];
  let silent = Number.POSITIVE_INFINITY;
  for (let at = 44; at < file.length - 1; at += 2) {
    const level = Math.abs(file.readInt16LE(at)) / 32_768;
    if (level < LOUD) {
      silent += 1;
      continue;
    }
    if (silent > SILENCE * rate) found.push((at - 44) / 2 / rate);
    silent = 0;
  }
  return found;
}
