// Any string as text that XML may hold.

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** The words with line ends and tabs as spaces, and what files must not hold (controls, halves of pairs) as U+FFFD. */
export function wellFormed(words: string): string {
  return words.replace(/[\t\r\n]+/g, ' ').replace(FORBIDDEN, '\uFFFD');
}

/** The words for use between tags or in an attribute. */
export function escapeXml(words: string): string {
  if (PLAIN.test(words)) return words;
  return wellFormed(words).replace(/[&<>"']/g, (character) => ENTITIES[character] ?? character);
}

/** What stands as it is: printed ASCII without what XML reads as more than itself. */
const PLAIN = /^[ !#-%(-;=?-~]*$/;

/** Outside the characters of XML 1.0, section 2.2, and the controls above ASCII. */
const FORBIDDEN = /[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu;
