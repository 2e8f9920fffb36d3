// Words as text strings of a PDF file (ISO 32000, 7.9.2.2).

/** As they are where they are ASCII, else in hexadecimal digits. */
export function pdfText(words: string): string {
  return /^[ -~]*$/.test(words) ? `(${words.replace(/[()\\]/g, '\\$&')})` : hexText(words);
}

/** In the hexadecimal digits of UTF-16. */
export function hexText(words: string): string {
  let digits = '<feff';
  for (let at = 0; at < words.length; at++)
    digits += words.charCodeAt(at).toString(16).padStart(4, '0');
  return `${digits}>`;
}
