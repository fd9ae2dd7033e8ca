/** Samples from -1 to 1 as a WAV file: one channel, 16-bit PCM, little-endian (RIFF). */
export function writeWav(samples: Float32Array, sampleRate: number): Uint8Array<ArrayBuffer> {
  const bytes = samples.length * 2;
  const file = new DataView(new ArrayBuffer(44 + bytes));
  const text = (at: number, word: string) => {
    for (const [place, letter] of [...word].entries())
      file.setUint8(at + place, letter.charCodeAt(0));
  };
  text(0, 'RIFF');
  file.setUint32(4, 36 + bytes, true);
  text(8, 'WAVEfmt ');
  file.setUint32(16, 16, true);
  file.setUint16(20, 1, true);
  file.setUint16(22, 1, true);
  file.setUint32(24, sampleRate, true);
  file.setUint32(28, sampleRate * 2, true);
  file.setUint16(32, 2, true);
  file.setUint16(34, 16, true);
  text(36, 'data');
  file.setUint32(40, bytes, true);
  samples.forEach((sample, place) => {
    file.setInt16(44 + place * 2, Math.round(Math.max(-1, Math.min(1, sample)) * 32_767), true);
  });
  return new Uint8Array(file.buffer);
}
