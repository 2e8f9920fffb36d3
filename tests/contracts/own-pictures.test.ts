// Pictures of a family's own go through every activity that takes pictures, and through codes and files.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import {
  figureName,
  haveLikeOutlines,
  knowOwnPicture,
  MOST_PICTURE_CHARACTERS,
  outlineShare,
  ownFormOf,
  ownPictureId,
  PICTURES,
  turnedOutlineShare,
} from '../../src/figures/index.ts';
import {
  checkPackText,
  DEFAULT_PAGE,
  makePack,
  makeSheet,
  packFileText,
  readCode,
  readRecipe,
  type SheetRequest,
  takesOwnPictures,
} from '../../src/sheets/index.ts';
import { sentenceOf } from '../../src/words/index.ts';
import { knownCopyOf, knownNumberOf, ownCopyOf } from '../own-pictures.ts';

const COPIED = ['cat', 'umbrella', 'key', 'snake', 'tree', 'plane', 'bed', 'giraffe'] as const;
const ids = COPIED.map((name) => knownCopyOf(`picture-${name}`, `my ${name}`));
const ALONE = { ids, alone: true } as const;

const taking = ACTIVITY_IDS.filter(takesOwnPictures);

function request(activity: SheetRequest['activity'], seed: number): SheetRequest {
  const choices = { page: DEFAULT_PAGE, print: 'colour', pictures: ALONE } as const;
  return { activity, step: 1, values: { content: 'pictures' }, seed, ...choices };
}

/** The first step and number of tasks at which the activity makes a sheet of these pictures, with all refusals on the way. */
function sheetOf(activity: SheetRequest['activity'], seed: number) {
  const refused: string[] = [];
  for (const step of activityOf(activity).ladder.keys()) {
    for (const extra of [{}, { response: 'point' }, { response: 'ring' }]) {
      const values = { content: 'pictures', ...extra };
      const made = makeSheet({ ...request(activity, seed), step: step + 1, values, tasks: 1 });
      if (made.ok) return made.value;
      refused.push(...made.refusals.map(sentenceOf));
    }
  }
  throw new Error(`${activity}: ${refused[0]}`);
}

describe('an own picture', () => {
  it.each(taking)('alone makes proven sheets of %s that its code makes again', (activity) => {
    for (const seed of [1, 2, 3]) {
      const sheet = sheetOf(activity, seed);
      expect(JSON.stringify(sheet.tasks)).toContain('picture-own-');
      const read = readCode(sheet.code);
      expect(read).toEqual({ ok: true, value: sheet.spec });
      expect(read.ok && makeSheet(read.value)).toEqual({ ok: true, value: sheet });
    }
  });

  it.each(ACTIVITY_IDS.filter((id) => !taking.includes(id)))(
    'is refused in words for %s, which has no pictures',
    (activity) => {
      const made = makeSheet(request(activity, 3));
      const said = made.ok ? '' : made.refusals.map(sentenceOf).join(' ');
      expect(said).toMatch(/content: expected one of .*, got "pictures"/);
    },
  );

  it('is as near to a picture that it copies as nothing else, and as far from others as that one', () => {
    for (const [index, name] of COPIED.entries()) {
      const [own, copied] = [ownFormOf(ids[index] ?? ''), `picture-${name}` as const];
      expect(outlineShare({ form: own }, { form: copied })).toBeLessThanOrEqual(0.02);
      expect(haveLikeOutlines(own, copied)).toBe(true);
      for (const other of PICTURES.filter((picture) => picture !== copied)) {
        const [one, two] = [own, copied].map((form) =>
          turnedOutlineShare({ form }, { form: other }),
        );
        expect(Math.abs((one ?? 0) - (two ?? 1)), `${name} and ${other}`).toBeLessThanOrEqual(0.04);
      }
    }
  });

  it('never stands in a task beside one that it is too alike to', () => {
    const [outline, [fill]] = [ownCopyOf('picture-cat').outline, ['#e8a33d']];
    const alike = knownNumberOf({ outline, parts: [[fill, outline]] });
    expect(alike).not.toBe(ids[0]);
    for (let seed = 0; seed < 40; seed++) {
      const pictures = { ids: [ids[0] ?? '', alike] };
      const made = makeSheet({ ...request('find-the-same', seed), step: 5, pictures });
      if (!made.ok) throw new Error(JSON.stringify(made.refusals));
      for (const { printed } of made.value.tasks) {
        const text = JSON.stringify(printed);
        expect(text.includes(`own-${ids[0]}`) && text.includes(`own-${alike}`)).toBe(false);
      }
    }
  });

  it('has a number that its name is no part of, and is called by its name', () => {
    expect(ownPictureId(ownCopyOf('picture-cat', 'Tom'))).toBe(ids[0]);
    expect(figureName({ form: ownFormOf(ids[1] ?? '') })).toBe('my umbrella');
  });

  it('on a sheet of anything else is no part of its code', () => {
    const plain = { ...request('find-the-same', 5), values: { content: 'shapes' } };
    const { pictures: _pictures, ...without } = plain;
    const [made, same] = [makeSheet(plain), makeSheet(without)];
    expect(made.ok && same.ok && made.value.code === same.value.code).toBe(true);
  });

  it('that is not here is said plainly', () => {
    const made = makeSheet({ ...request('find-the-same', 4), pictures: { ids: ['2222222'] } });
    const said = made.ok ? '' : made.refusals.map(sentenceOf).join(' ');
    expect(said).toMatch(/2222222.* not kept on this device. Nothing is lost/);
  });
});

describe('files', () => {
  it('hold the pictures that their sheets show, and are proven again from themselves', () => {
    const recipe = readRecipe({
      format: 'samewise.recipe',
      version: 1,
      seed: 9,
      pictures: COPIED.map((name) => ownCopyOf(`picture-${name}`, `my ${name}`)),
      onlyOwnPictures: true,
      parts: [{ activity: 'find-the-same', step: 1, values: { content: 'pictures' }, sheets: 2 }],
    });
    if (!recipe.ok) throw new Error(recipe.refusals.map(sentenceOf).join(' '));
    const pack = makePack({ ...recipe.value, seed: 9 });
    if (!pack.ok) throw new Error(pack.refusals.map(sentenceOf).join(' '));
    const text = packFileText(pack.value);
    expect(text.match(/"outline"/g)).toHaveLength(COPIED.length);
    expect(checkPackText(text)).toMatchObject({ ok: true, value: { faults: [], notes: [] } });
    const without = text
      .replace(/"pictures":\[[\s\S]*?\n\],/, '')
      .replaceAll(ids[0] ?? '', '2222222');
    expect(checkPackText(without)).toMatchObject({ ok: false });
  });

  it.each([
    ['too much', { outline: 'L', parts: [['#ffffff', `M0 0${'L1 1'.repeat(2100)}Z`]] }],
    ['a path that is none', { outline: 'M0 0Lx 1Z', parts: [['#ffffff', 'M0 0L1 1Z']] }],
    ['a speck', { outline: 'M0 0L9 0L9 9Z', parts: [['#ffffff', 'M0 0L9 0L9 9Z']] }],
    [
      'another outline than its parts',
      {
        outline: 'M-400 -400L400 -400L400 400L-400 400Z',
        parts: [['#ffffff', 'M-90 -90L90 -90L90 90L-90 90Z']],
      },
    ],
  ] as const)('with %s are refused', (_, picture) => {
    expect(MOST_PICTURE_CHARACTERS).toBe(8000);
    expect(knowOwnPicture(picture, 'test').ok).toBe(false);
  });
});
