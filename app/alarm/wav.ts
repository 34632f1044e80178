const HEADER = 44;

const writeText = (view: DataView, at: number, text: string) => {
  for (const [i, letter] of [...text].entries()) view.setUint8(at + i, letter.charCodeAt(0));
};

/**
 * A mono 16-bit WAV file of samples from -1 to 1.
 *
 * @source Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft, 1991),
 * "Waveform Audio File Format"; field offsets from memory, checked by reading the file with other
 * programs
 */
export function wavOf(samples: Float32Array, rate: number): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(HEADER + samples.length * 2);
  const view = new DataView(bytes.buffer);
  writeText(view, 0, "RIFF");
  view.setUint32(4, bytes.length - 8, true);
  writeText(view, 8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  writeText(view, 36, "data");
  view.setUint32(40, samples.length * 2, true);
  // By index: a quarter of a minute is 240 000 samples, written just when it is to ring.
  for (let i = 0; i < samples.length; i++) {
    const clipped = Math.max(-1, Math.min(1, samples[i] ?? 0));
    view.setInt16(HEADER + i * 2, Math.round(clipped * 32767), true);
  }
  return bytes;
}
