// Text from strangers' files, made safe to show on a terminal.

/** The text with control characters, and marks that turn the direction of writing, made visible as �. */
export function plainText(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, '�');
}
