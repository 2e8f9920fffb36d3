// What stands under the page is of the sheet that it names, whichever of the adult's pages lies there.
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { words as changingWords } from '../changing/words.ts';
import { gatherCatalogue } from '../making/catalogue.ts';
import type { Shown, View } from '../making/protocol.ts';
import { show } from '../making/show.ts';
import { FIRST_ENTRIES } from '../recipe/entries.ts';
import { words } from '../words.ts';
import { Proof } from './proof.tsx';

const entries = { ...FIRST_ENTRIES, seed: 5, sheets: 2 };

function shownOn(view: View, some: Partial<Shown>): Shown {
  const made = show({ entries }, view, { wanted: 2, leaf: 1 });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return { ...made.value, ...some };
}

function proofOf(view: View, shown: Shown): string {
  const card = gatherCatalogue().activities.find(({ id }) => id === shown.activity);
  return renderToStaticMarkup(createElement(Proof, { shown, card, view, isRefused: false }));
}

test('a doubt of the second sheet is no doubt of the first, on the second page for the adult', () => {
  const doubts = [{ sheet: 2, task: 1, reason: 'none' }] as const;
  const ofSheet = shownOn('sheet', { doubts });
  expect(proofOf('sheet', ofSheet)).toContain(changingWords.sure(ofSheet.tasks, 1));
  const ofAdult = shownOn('adult', { doubts, place: 2, places: 2 });
  expect(proofOf('adult', ofAdult)).toContain(words.checked(ofAdult.tasks));
});

test('answers are not read aloud whenever the page changes', () => {
  const proof = proofOf('answers', shownOn('answers', {}));
  expect(proof).toMatch(/<ol class="answers" aria-live="off">/);
});
