// Hands a file to the browser to save, without any server.

/** Long enough for a browser to have taken the file over (common practice, no source). */
const TAKEN_OVER_MS = 60_000;

export function saveFile(name: string, type: string, bytes: Uint8Array<ArrayBuffer>): void {
  const address = URL.createObjectURL(new Blob([bytes], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), TAKEN_OVER_MS);
}
