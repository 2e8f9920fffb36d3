// Pages in every language: all that is said of all activities, with no letter missing and nothing outside the paper.
// Letters: the character tables (`cmap`, OpenType) of the fonts themselves, as fontkit reads them.
import { readFileSync } from 'node:fs';
import * as fontkit from 'fontkit';
import { beforeAll, describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { pagesMade } from '../../src/by-hand/index.ts';
import { LANGUAGES, type Language, loadAllCatalogues } from '../../src/languages/index.ts';
import {
  type Face,
  faceOf,
  hasFace,
  type Page,
  type SceneNode,
  scriptOf,
  type Text,
} from '../../src/page/index.ts';
import { makePack, type Pack, packPages, rulerPages, TO_CUT } from '../../src/sheets/index.ts';
import { loadAllScripts } from '../outside/script-fonts.ts';
import { outsideOf } from '../scene-bounds.ts';

beforeAll(async () => {
  await loadAllCatalogues();
  await loadAllScripts();
});

const fileOf = (name: string) =>
  readFileSync(new URL(`../../assets/fonts/${name}`, import.meta.url));
const ANDIKA = {
  regular: fontkit.create(fileOf('Andika-Regular.ttf')),
  bold: fontkit.create(fileOf('Andika-Bold.ttf')),
};
const opened = new Map<Face, fontkit.Font>();

function fontOf(face: Face): fontkit.Font {
  const font = opened.get(face) ?? fontkit.create(face.file);
  opened.set(face, font);
  return font;
}

/** What a word becomes that cannot be printed. */
const WRITE_IN = '_'.repeat(14);

/** Joiners and marks of direction, which have no look of their own. */
const UNSEEN = /[\u200c-\u200f\u2066-\u2069]/;

function packOf(activity: (typeof ACTIVITY_IDS)[number]): Pack {
  const { length } = activityOf(activity).ladder;
  const steps = [...new Set([1, Math.ceil(length / 2), length])];
  const made = makePack({
    ...{ seed: 11, page: { paper: 'A4', orientation: 'portrait' }, print: 'colour' },
    parts: steps.map((step) => ({ activity, step, values: {}, sheets: 1 })),
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return { ...made.value, toCut: TO_CUT };
}

function pagesOf(pack: Pack, language: Language): readonly Page[] {
  const byHand = pagesMade({ sheets: pack.sheets }, { made: 'by-hand' }, { language });
  if (!byHand.ok) throw new Error(JSON.stringify(byHand.refusals));
  return [
    ...packPages(pack, { language }).pages,
    ...byHand.value.pages,
    ...rulerPages('A4', language).pages,
  ];
}

function textsIn(node: SceneNode): readonly Text[] {
  if (node.kind === 'group') return node.children.flatMap(textsIn);
  return node.kind === 'text' ? [node] : [];
}

/** What of the words no font has, in words. */
function missingIn({ text, weight }: Text): readonly string[] {
  return [...text]
    .filter((character) => !UNSEEN.test(character))
    .filter((character) => {
      if (ANDIKA[weight].hasGlyphForCodePoint(character.codePointAt(0) ?? 0)) return false;
      const script = scriptOf(character);
      if (script === undefined || !hasFace(script)) return true;
      return !fontOf(faceOf(script, weight)).hasGlyphForCodePoint(character.codePointAt(0) ?? 0);
    })
    .map((character) => `${character} in “${text}”`);
}

describe.each(LANGUAGES)('%s', (language) => {
  test.each(ACTIVITY_IDS)(
    '%s: each letter is in its font, and all lies on the paper',
    (activity) => {
      for (const page of pagesOf(packOf(activity), language)) {
        const texts = page.nodes.flatMap(textsIn);
        expect(texts.flatMap(missingIn), page.title).toEqual([]);
        expect(texts.filter(({ text }) => text.includes(WRITE_IN)).map(({ text }) => text)).toEqual(
          [],
        );
        const all = { kind: 'group', children: page.nodes } as const;
        expect(outsideOf(all, page.widthMm, page.heightMm), page.title).toEqual([]);
      }
    },
  );
});
