// What a screen says outside the brackets of an invented language, and what of it is the core's to say.
import type { Page } from 'playwright-core';
import { COLOUR_NAMES } from '../../src/palette/index.ts';
import { gatherCatalogue } from '../../src/web/making/catalogue.ts';

/** All texts that the core gives the controls. */
export function coreSays(): readonly string[] {
  return [...textsIn(gatherCatalogue()), ...COLOUR_NAMES];
}

function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return value instanceof Object ? Object.values(value).flatMap(textsIn) : [];
}

/** Names of things that are no words of the app: pictures, codes, what explains the difficulty, names of languages. */
const NOT_OURS = '.sheet, svg, .code, style, script, noscript, option[lang], .proof';

/** Texts and labels in the document outside the brackets, but for those that are known; letters only. */
export async function outsideBrackets(
  page: Page,
  known: readonly string[],
): Promise<readonly string[]> {
  const outside = await page.evaluate((notOurs) => {
    const found: string[] = [];
    let depth = 0;
    const read = (text: string) => {
      let rest = '';
      for (const letter of text) {
        if (letter === '⟦') depth += 1;
        else if (letter === '⟧') depth -= 1;
        else if (depth === 0) rest += letter;
      }
      if (rest.trim() !== '') found.push(rest.trim());
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!node.parentElement?.closest(notOurs)) read(node.textContent ?? '');
    }
    for (const name of ['aria-label', 'alt', 'title', 'placeholder', 'aria-description']) {
      for (const element of Array.from(document.querySelectorAll(`body [${name}]`))) {
        depth = 0;
        if (!element.closest(notOurs)) read(element.getAttribute(name) ?? '');
      }
    }
    read(document.title);
    return [...new Set(found)];
  }, NOT_OURS);
  const isKnown = new Set(known.flatMap((text) => [small(text), small(`${text}.`)]));
  return outside.filter(
    (text) => /\p{L}{2}/u.test(text) && !isKnown.has(small(text)) && !TITLE_OF_SHEET.test(text),
  );
}

/** Given by the core, as it stands on the page: `by key, step 2, sheet 3CFR-YRT7`. */
const TITLE_OF_SHEET = /, sheet [0-9A-Z]{4}(-[0-9A-Z]{2,4})+$/;

function small(text: string): string {
  return text.toLowerCase();
}
