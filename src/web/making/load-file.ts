// A file of the app's own, such as a font.

/** Its bytes; an error where it does not load. */
export async function loadFile(address: string): Promise<Uint8Array> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`the font did not load (${response.status})`);
  return new Uint8Array(await response.arrayBuffer());
}
