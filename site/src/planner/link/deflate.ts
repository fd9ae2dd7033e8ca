/** A text as few bytes. */
export async function deflate(text: string): Promise<Uint8Array> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** More text than any plan has; a link that swells beyond it is not one of ours. */
const MOST_BYTES = 2_000_000;

/** The text of such bytes, or `null` where they are damaged. */
export async function inflate(bytes: Uint8Array): Promise<string | null> {
  const stream = new Blob([bytes.slice()])
    .stream()
    .pipeThrough(new DecompressionStream('deflate-raw'));
  const reader = stream.getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let size = 0;
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      size += part.value.length;
      if (size > MOST_BYTES) return null;
      text += decoder.decode(part.value, { stream: true });
    }
    return text + decoder.decode();
  } catch {
    return null;
  }
}
