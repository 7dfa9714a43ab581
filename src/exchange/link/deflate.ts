/** Compression as the platform has it (RFC 1951, without a frame). */

export const deflate = (bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> =>
  collected(new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate-raw')));

/** Nothing where the bytes are damaged, or hold more than `most` bytes: a short text can stand for a very long one. */
export async function inflate(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<Uint8Array | undefined> {
  try {
    return await collected(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw')), most);
  } catch {
    // Whatever the platform says of damaged data, in words that differ from browser to browser.
    return undefined;
  }
}

async function collected(
  stream: ReadableStream<Uint8Array>,
  most = Number.POSITIVE_INFINITY,
): Promise<Uint8Array<ArrayBuffer>> {
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader = stream.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    parts.push(value);
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new RangeError(`More than ${most} bytes.`);
    }
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
