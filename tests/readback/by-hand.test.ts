// Follows the printed list of a guide, line by line and nothing else, and looks at what it has made.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, type ActivityId, activityOf } from '../../src/activities/index.ts';
import { guidePages, makeGuide } from '../../src/by-hand/index.ts';
import type { Page, SceneNode } from '../../src/page/index.ts';
import { makeSheet, type Sheet, taskGroups } from '../../src/sheets/index.ts';
import { testSeed } from '../seed.ts';

const seed = testSeed('by hand read back');
const SEEDS = 4;

/** What lies on the page once the list has been followed; in mm. */
interface MadePage {
  readonly boxes: Box[];
  readonly things: Thing[];
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Thing {
  readonly what: string;
  readonly colour: string;
  readonly x: number;
  readonly y: number;
}

function sheetOf(activity: ActivityId, step: number, of: number, tasks?: number): Sheet {
  const page = { paper: 'A4', orientation: 'portrait' } as const;
  const asked = { activity, step, values: {}, seed: of, page, print: 'colour' } as const;
  const made = makeSheet(tasks === undefined ? asked : { ...asked, tasks });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

/** The words of the guide as they are read: down the columns, page after page. */
function listOf(sheet: Sheet): string | undefined {
  const guide = makeGuide(sheet);
  if (!guide.ok) throw new Error(JSON.stringify(guide.refusals));
  if (guide.value.copied) return undefined;
  return guidePages(guide.value).map(textOf).join(' ').replaceAll(/\s+/g, ' ');
}

function textOf({ nodes }: Page): string {
  const texts = (node: SceneNode): readonly string[] => {
    if (node.kind === 'text') return [node.text];
    // The small picture is looked at, not followed.
    return node.kind === 'group' && node.role !== 'how-it-looks'
      ? node.children.flatMap(texts)
      : [];
  };
  return nodes.flatMap(texts).join(' ');
}

const LINES = new RegExp(
  [
    'Fold the page (?<fold>in [^.]*)\\.',
    '(?:dashed )?box \\d+: (?<left>\\d+) across, (?<top>\\d+) down, (?<wide>\\d+) wide, (?<high>\\d+) high',
    'Stick on \\d+ (?<sticker>\\w+), \\d+ mm',
    'Draw \\d+ with the (?<pen>\\w+) pen',
    'Draw \\d+ (?<colours>in colours)',
    '(?<number>\\d+)\\. (?:(?<what>[^:.\\d(]*), \\d+ mm(?: wide, \\d+ mm high)?(?:, copied)?: )?(?:its upper left corner )?(?<x>\\d+) across, (?<y>\\d+) down',
  ].join('|'),
  'g',
);

function follow(list: string): MadePage {
  const made: MadePage = { boxes: [], things: [] };
  let colour = '';
  let isSticking = false;
  for (const { groups = {} } of list.matchAll(LINES)) {
    const { fold, left, sticker, pen, colours, x, y, what } = groups;
    if (fold !== undefined) made.boxes.push(...partsOf(fold));
    else if (left !== undefined) made.boxes.push(boxOf(groups));
    else if (sticker !== undefined || pen !== undefined || colours !== undefined) {
      colour = sticker ?? pen ?? '';
      isSticking = sticker !== undefined;
    } else {
      const name = isSticking ? 'circle' : (what ?? '');
      made.things.push({ what: name, colour, x: Number(x), y: Number(y) });
    }
  }
  return made;
}

function boxOf({ left, top, wide, high }: Readonly<Record<string, string | undefined>>): Box {
  const [x, y] = [Number(left), Number(top)];
  return { left: x, top: y, right: x + Number(wide), bottom: y + Number(high) };
}

const PARTS: Readonly<Record<string, number>> = { half: 2, three: 3, four: 4 };

/** The parts of an upright A4 page (ISO 216: 210 by 297 mm), row by row. */
function partsOf(words: string): readonly Box[] {
  const of = (direction: string) => {
    const [, name = ''] = new RegExp(`in (\\w+), the creases ${direction}`).exec(words) ?? [];
    return PARTS[name] ?? 1;
  };
  const [rows, columns] = [of('from side to side'), of('from top to bottom')];
  return Array.from({ length: rows * columns }, (_, index) => {
    const [row, column] = [Math.floor(index / columns), index % columns];
    return {
      left: (column * 210) / columns,
      right: ((column + 1) * 210) / columns,
      top: (row * 297) / rows,
      bottom: ((row + 1) * 297) / rows,
    };
  });
}

function inside({ x, y }: Thing, box: Box): boolean {
  return x > box.left && x < box.right && y > box.top && y < box.bottom;
}

/** Row by row as one reads. */
function asRead(one: Thing, other: Thing): number {
  return one.y - other.y || one.x - other.x;
}

describe('in every box', () => {
  const DOTS = [1, 2, 3, 4, 5, 6, 7, 8, 9];

  test.each(DOTS)(
    'step %i, made from the words of its guide, has the answer of the key',
    (step) => {
      for (let more = 0; more < SEEDS; more++) {
        const sheet = sheetOf('in-every-box', step, seed + more, 1);
        const list = listOf(sheet);
        if (list === undefined) throw new Error(`${sheet.code}: is to be copied`);
        const { boxes, things } = follow(list);
        const made = boxes.map((box) => ({
          figures: things
            .filter((thing) => inside(thing, box))
            .sort(asRead)
            .map(({ colour }) => ({ form: 'circle', colour })),
        }));
        const [task] = sheet.tasks;
        if (!task) throw new Error('no task');
        expect(made, sheet.code).toEqual((task.printed as { readonly boxes: unknown }).boxes);
        const answer = task.answer;
        const proof = activityOf('in-every-box').prove({ printed: { boxes: made }, answer });
        expect(proof, sheet.code).toEqual({ proven: true });
      }
    },
  );

  test('with one dot left out, the key no longer holds', () => {
    const sheet = sheetOf('in-every-box', 1, seed, 1);
    const { boxes, things } = follow(listOf(sheet) ?? '');
    const [task] = sheet.tasks;
    if (!task) throw new Error('no task');
    const { figures: key } = task.answer as {
      readonly figures: readonly { readonly colour: string }[];
    };
    const left = things.filter(({ colour }) => colour === key[0]?.colour).slice(1);
    const others = things.filter(({ colour }) => colour !== key[0]?.colour);
    const printed = {
      boxes: boxes.map((box) => ({
        figures: [...left, ...others]
          .filter((thing) => inside(thing, box))
          .map(({ colour }) => ({ form: 'circle', colour })),
      })),
    };
    const proof = activityOf('in-every-box').prove({ printed, answer: task.answer });
    expect(proof).not.toEqual({ proven: true });
  });
});

/** What a figure of the sheet is called without its colour, and its colour, by the words for who cannot see it. */
const COLOURS = /\b(red|orange|yellow|green|blue|purple|pink|brown|grey|black) /;

function printedThings(sheet: Sheet): readonly Pick<Thing, 'what' | 'colour'>[] {
  const found = (node: SceneNode): readonly Pick<Thing, 'what' | 'colour'>[] => {
    // Of what is cut off only a patch of colour shows.
    if (node.kind !== 'group' || node.clip) return [];
    if (!node.shows) return node.children.flatMap(found);
    const said = node.alt ?? '';
    // A head of a table is called by its form alone.
    const isBare = node.shows.fill === 'outline' && !said.includes('in outline');
    const name = isBare ? `${said} in outline` : said;
    const [, colour = 'black'] = COLOURS.exec(name) ?? [];
    return [{ what: name.replace(COLOURS, ''), colour }];
  };
  return taskGroups(sheet, false).flatMap(found);
}

describe.each(ACTIVITY_IDS)('%s', (id) => {
  const { length } = activityOf(id).ladder;

  test('what its guide says to make are the figures of the sheet, each as often as it is printed', () => {
    for (const step of [1, 2, Math.ceil(length / 2)]) {
      const sheet = sheetOf(id, step, seed + step, 1);
      const list = listOf(sheet);
      if (list === undefined) continue;
      const { things } = follow(list);
      const printed = printedThings(sheet);
      const count = (all: readonly Pick<Thing, 'what' | 'colour'>[], wanted: Thing) =>
        all.filter(({ what, colour }) => what === wanted.what && colour === wanted.colour).length;
      const figures = things.filter((thing) => count(printed, thing) > 0);
      for (const thing of figures) {
        expect(count(printed, thing), `${sheet.code} ${thing.colour} ${thing.what}`).toBe(
          count(things, thing),
        );
      }
      expect(figures.length, sheet.code).toBeGreaterThan(0);
    }
  });
});
