// What pages to cut promise: they say the same as their sheet, follow it, and leave it and its code as they are.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, type ActivityId, activityOf } from '../activities/index.ts';
import { type Group, groupsWithRole, type Page, type SceneNode } from '../page/index.ts';
import { cardPages } from './card-pages.ts';
import { cutPagesOf, notToBeCut } from './cut-pages.ts';
import { keyCardPages, keyCardsOf } from './key-cards.ts';
import { makePack } from './make-pack.ts';
import type { Pack } from './pack.ts';
import { checkPackText } from './pack-check.ts';
import { packFileText } from './pack-file.ts';
import { packPages } from './pack-pages.ts';
import { overEdge, textsIn, words } from './pages-to-test.ts';
import { piecePages, piecesOf } from './piece-pages.ts';
import { readRecipe } from './read-recipe.ts';
import { makeSheet, type Sheet } from './sheet.ts';
import { sheetPage } from './sheet-page.ts';
import { styleOf } from './sheet-spec.ts';
import { TO_CUT, type ToCut } from './to-cut.ts';

const PAGE = { paper: 'A4', orientation: 'portrait' } as const;

function sheetOf(activity: ActivityId, step: number, seed = 3, values = {}): Sheet {
  const made = makeSheet({ activity, step, values, seed, page: PAGE, print: 'colour' });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

/** Two sheets of every step of every activity. */
const ALL = ACTIVITY_IDS.flatMap((id) =>
  activityOf(id).ladder.flatMap((_, index) => [
    sheetOf(id, index + 1, 3),
    sheetOf(id, index + 1, 4),
  ]),
);

const groupsIn = (page: Page, ...roles: string[]): readonly Group[] =>
  page.nodes.flatMap((node) => groupsWithRole(node, roles).map(({ group }) => group));
const alts = (node: SceneNode): readonly (string | undefined)[] =>
  groupsWithRole(node, ['figure']).map(({ group }) => group.alt);
const nameOf = ({ spec, code }: Sheet) => `${spec.activity}, step ${spec.step}, sheet ${code}`;

describe('cards of the tasks', () => {
  it('show each task as the sheet shows it, at true size, or as the activity draws it at its least', () => {
    for (const sheet of ALL) {
      const onSheet = groupsIn(sheetPage(sheet), 'task');
      const onCards = cardPages(sheet).flatMap((page) => groupsIn(page, 'task'));
      const { draw, room } = activityOf(sheet.spec.activity);
      expect(onCards.length, nameOf(sheet)).toBe(sheet.tasks.length);
      for (const [index, card] of onCards.entries()) {
        const task = sheet.tasks[index];
        if (!task) continue;
        const least = draw(task, room(task.printed), styleOf(sheet.spec), false);
        const { alt = '' } = card;
        expect([onSheet[index], { ...least, alt }], nameOf(sheet)).toContainEqual(card);
        expect(alts(card), nameOf(sheet)).toEqual(alts(onSheet[index] as Group));
      }
    }
  });

  it('are never made smaller than the task at its least, and all of one size', () => {
    for (const sheet of ALL) {
      for (const page of cardPages(sheet)) {
        for (const { transform } of groupsIn(page, 'card-task'))
          expect(transform?.[0], nameOf(sheet)).toBeCloseTo(1, 6);
      }
    }
  });

  it('tell the code of their sheet and their own number', () => {
    const sheet = sheetOf('find-the-same', 4);
    const labels = cardPages(sheet).flatMap((page) => textsIn(groupsIn(page, 'card-label')));
    expect(labels).toEqual(sheet.tasks.map((_, index) => `${sheet.code} · ${index + 1}`));
  });
});

describe('a key card', () => {
  it('is the key or the one model of the sheet itself, at true size', () => {
    const withKeys = ALL.filter((sheet) => keyCardsOf([sheet]).flat().length > 0);
    for (const sheet of withKeys) {
      const onSheet = groupsIn(sheetPage(sheet), 'key', 'model');
      const pages = keyCardPages(sheet, keyCardsOf([sheet]).flat());
      const onCards = pages.flatMap((page) => groupsIn(page, 'key', 'model'));
      for (const card of onCards) expect(onSheet, nameOf(sheet)).toContainEqual(card);
      for (const { transform } of pages.flatMap((page) => groupsIn(page, 'key-place')))
        expect(transform?.[0], nameOf(sheet)).toBeCloseTo(1, 6);
    }
    const kinds = new Set(withKeys.map(({ spec }) => spec.activity));
    for (const id of ['by-key', 'copy-pattern', 'find-the-same', 'turned-shapes'] as const)
      expect(kinds).toContain(id);
  });

  it('never shows what is to be remembered', () => {
    const remembered = ALL.filter(({ spec }) => spec.activity === 'look-and-remember');
    expect(keyCardsOf(remembered).flat()).toEqual([]);
  });

  it('is printed once for sheets that share the key, and names them all', () => {
    const [one, other] = [sheetOf('by-key', 4, 3), sheetOf('by-key', 4, 9)];
    const again = { ...one, code: 'AGAIN' };
    const [first, second, third] = keyCardsOf([one, other, again]);
    expect([first?.length, second?.length, third?.length]).toEqual([1, 1, 0]);
    expect(first?.[0]?.label).toBe(`${one.code}, AGAIN`);
  });
});

describe('pieces to cut', () => {
  const cut = ALL.filter((sheet) => piecePages(sheet).length > 0);

  it('are all there once, and never in the order of the answer where there is another', () => {
    for (const sheet of cut) {
      const meant = piecesOf(sheet);
      const drawn = piecePages(sheet).flatMap((page) => groupsIn(page, 'piece-drawing'));
      expect(drawn.length, nameOf(sheet)).toBe(meant.flat().length);
      let from = 0;
      for (const pieces of meant) {
        const onPage = drawn.slice(from, from + pieces.length).map((piece) => alts(piece).join());
        from += pieces.length;
        const own = pieces.map(({ drawing }) => alts(drawing).join());
        expect(onPage.toSorted(), nameOf(sheet)).toEqual(own.toSorted());
        const right = pieces
          .filter(({ place }) => place)
          .map(({ drawing }) => alts(drawing).join());
        const extra = pieces
          .filter(({ place }) => !place)
          .map(({ drawing }) => alts(drawing).join());
        const rightOnPage = onPage.filter((look) => !extra.includes(look));
        if (new Set(right).size > 1 && !extra.some((look) => right.includes(look)))
          expect(rightOnPage, nameOf(sheet)).not.toEqual(right);
      }
    }
  });

  it('show which side is down wherever a piece could pass for another when it is turned', () => {
    const feetOn = (content: string) => {
      const sheet = sheetOf('one-of-each', 3, 3, { content, response: 'point' });
      const pages = piecePages(sheet);
      const count = (role: string) => pages.flatMap((page) => groupsIn(page, role)).length;
      return count('piece-foot') / count('piece');
    };
    for (const content of ['directions', 'capitals', 'numerals', 'textures'])
      expect(feetOn(content), content).toBe(1);
    for (const content of ['colours', 'shapes']) expect(feetOn(content), content).toBe(0);
  });

  it('lie in the same order whenever the sheet is made', () => {
    const sheet = sheetOf('crossing-table', 8);
    expect(piecePages(sheet)).toEqual(piecePages(sheetOf('crossing-table', 8)));
  });
});

describe('all pages to cut', () => {
  it('keep the margin on every paper', () => {
    for (const paper of ['A4', 'Letter'] as const) {
      for (const orientation of ['portrait', 'landscape'] as const) {
        for (const id of ACTIVITY_IDS) {
          const page = { paper, orientation };
          const made = makeSheet({
            activity: id,
            step: 4,
            values: {},
            seed: 1,
            page,
            print: 'colour',
          });
          if (!made.ok) continue;
          const pagesAt = cutPagesOf({ sheets: [made.value], toCut: TO_CUT });
          for (const each of pagesAt(0).flatMap(({ pages }) => pages))
            expect(overEdge(each), `${each.title}, ${paper} ${orientation}`).toEqual([]);
        }
      }
    }
  });

  it('tell at their foot which sheet they are of', () => {
    const sheet = sheetOf('one-of-each', 3);
    const pagesAt = cutPagesOf({ sheets: [sheet], toCut: TO_CUT });
    const pages = pagesAt(0).flatMap((each) => each.pages);
    expect(pages.length).toBe(2);
    for (const page of pages) expect(words(page)).toContain(sheet.code);
  });
});

const RECIPE = {
  format: 'samewise.recipe',
  version: 1,
  seed: 5,
  parts: [
    { activity: 'one-of-each', step: 3, sheets: 2 },
    { activity: 'by-key', step: 3, sheets: 1 },
  ],
};

function packOf(toCut?: readonly ToCut[]): Pack {
  const recipe = readRecipe({ ...RECIPE, ...(toCut ? { toCut } : {}) });
  const pack = recipe.ok ? makePack({ ...recipe.value, seed: 5 }) : recipe;
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value;
}

describe('a pack with pages to cut', () => {
  it('has the same sheets with the same codes, and the same answer pages', () => {
    const [plain, cut] = [packOf(), packOf(['pieces', 'cards', 'key-card'])];
    expect(cut.sheets).toEqual(plain.sheets);
    const answersOf = (pack: Pack) =>
      [...packPages(pack).pages].filter(({ title }) => title.startsWith('Answers'));
    expect(answersOf(cut)).toEqual(answersOf(plain));
  });

  it('prints them directly after their sheet', () => {
    const pack = packOf(['pieces', 'key-card']);
    const titles = [...packPages(pack, { withAdultPage: false, withAnswers: false }).pages].map(
      ({ title }) => title,
    );
    const [one, two, key] = pack.sheets.map(({ code }) => code);
    expect(titles.map((title) => title.replace(/^.*, sheet /, 'sheet '))).toEqual([
      `sheet ${one}`,
      `Pieces for sheet ${one}`,
      `sheet ${two}`,
      `Pieces for sheet ${two}`,
      `sheet ${key}`,
      `Key of sheet ${key}`,
    ]);
  });

  it('keeps the choice in its file, which is proven as ever', () => {
    const text = packFileText(packOf(['pieces']));
    expect(JSON.parse(text).toCut).toEqual(['pieces']);
    const check = checkPackText(text);
    expect(check.ok && [check.value.faults, check.value.notes]).toEqual([[], []]);
    expect('toCut' in JSON.parse(packFileText(packOf()))).toBe(false);
  });

  it('lays out scissors and glue in place of stickers, with the cautions that go with them', () => {
    const pack = packOf(['pieces']);
    const [page] = packPages({ ...pack, sheets: pack.sheets.slice(0, 2) }).pages;
    const said = words(page);
    for (const part of [
      'round ends',
      'stay beside the child',
      'a glue stick',
      'under three',
      'one side',
    ])
      expect(said.replace(/\s+/g, ' ')).toContain(part);
    expect(said).not.toContain('Stickers,');
    expect(words([...packPages(packOf()).pages][0])).not.toContain('To cut out');
  });

  it('says which choices no sheet of it can have', () => {
    const [square] = packOf().sheets;
    if (!square) throw new Error('no sheet');
    expect(notToBeCut({ sheets: [square], toCut: TO_CUT })).toEqual(['key-card']);
  });
});
