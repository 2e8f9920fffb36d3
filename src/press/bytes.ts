// Bytes out of characters and of other bytes.

/** Each character as one byte; what is more than one byte loses the rest. */
export function bytesOf(characters: string): Uint8Array {
  const bytes = new Uint8Array(characters.length);
  for (let at = 0; at < bytes.length; at++) bytes[at] = characters.charCodeAt(at);
  return bytes;
}

export function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

export function hexOf(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
