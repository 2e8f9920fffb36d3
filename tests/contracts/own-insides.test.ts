// Pictures of a family's own that have one outline: what is inside tells them apart, or they never stand together.
import { describe, expect, it } from 'vitest';
import { activityOf } from '../../src/activities/index.ts';
import { styleForTask } from '../../src/activities/ink-saving.ts';
import { randomFrom } from '../../src/base/index.ts';
import {
  areLookAlikes,
  areToldByInsides,
  fairForAge,
  fairlyDifferent,
  haveLikeOutlines,
  INSIDE_FLOOR,
  idOfOwn,
  insideShare,
  mirrorTurnDeg,
  type OwnForm,
  type OwnPicture,
  ownFormOf,
  PICTURES,
  pairLikeness,
  sameFigure,
} from '../../src/figures/index.ts';
import { contrastOf, type Hex } from '../../src/palette/index.ts';
import {
  checkPackText,
  DEFAULT_PAGE,
  makePack,
  makeSheet,
  packFileText,
  readCode,
  type SheetRequest,
} from '../../src/sheets/index.ts';
import { sentenceOf } from '../../src/words/index.ts';
import { knownCopyOf, knownNumberOf, roundPhoto } from '../own-pictures.ts';

function formOfPhoto(picture: OwnPicture): OwnForm {
  return ownFormOf(knownNumberOf(picture));
}

const SKY = '#9cc4ea';
const HOUSE = formOfPhoto(roundPhoto('house', '#7a2b22', SKY));
const BALL = formOfPhoto(roundPhoto('ball', '#f4d64a', '#2c3a2a'));
const SHORE = formOfPhoto(roundPhoto('shore', '#e8d9a8', '#3f6fa8'));
const POLE = formOfPhoto(roundPhoto('pole', '#111111', '#f2f0ea'));
const DIFFERENT = [HOUSE, BALL, SHORE, POLE] as const;
const PAIRS = DIFFERENT.flatMap((one, place) =>
  DIFFERENT.slice(place + 1).map((other) => [one, other] as const),
);

/** The green that prints as nearly the same grey as a red. */
function greenLike(red: Hex): Hex {
  const greens = Array.from({ length: 200 }, (_, level): Hex => {
    return `#10${level.toString(16).padStart(2, '0')}20`;
  });
  const off = (green: Hex) => Math.abs(contrastOf(green, '#ffffff') - contrastOf(red, '#ffffff'));
  return greens.reduce((best, green) => (off(green) < off(best) ? green : best));
}

describe('two photos of one outline', () => {
  it('whose insides differ stand together, as fair as any other pictures', () => {
    for (const [one, other] of PAIRS) {
      expect(haveLikeOutlines(one, other)).toBe(true);
      expect(insideShare(one, other)).toBeGreaterThanOrEqual(INSIDE_FLOOR);
      expect(insideShare(other, one)).toBe(insideShare(one, other));
      expect(areLookAlikes(one, other)).toBe(false);
      const figures = [{ form: one }, { form: other }] as const;
      expect(sameFigure(...figures)).toBe(false);
      expect(fairlyDifferent(...figures)).toBe(true);
      expect(fairForAge(...figures, 3)).toBe(true);
      expect(pairLikeness(...figures)).toBeLessThan(0.5);
    }
  });

  it.each([
    ['in a shade', roundPhoto('house', '#80322a', SKY)],
    ['in a shade of the ground', roundPhoto('house', '#7a2b22', '#9fc2e6')],
  ])('whose insides differ only %s do not', (_, picture) => {
    const other = formOfPhoto(picture);
    expect(other).not.toBe(HOUSE);
    expect(areLookAlikes(HOUSE, other)).toBe(true);
    expect(fairlyDifferent({ form: HOUSE }, { form: other })).toBe(false);
  });

  it('of which one is the other mirrored or turned do not', () => {
    const turned: OwnPicture = {
      ...roundPhoto('house', '#7a2b22', SKY),
      parts: [
        [SKY, roundPhoto('house', SKY, SKY).outline],
        ['#7a2b22', 'M250 -250L-50 -250L-300 0L-50 250L250 250Z'],
      ],
    };
    expect(insideShare(HOUSE, formOfPhoto(turned))).toBeLessThanOrEqual(0.03);
  });

  it('of equal lightness do not, since pictures have no mark in grey', () => {
    const red: Hex = '#c8403c';
    const [one, like, dark] = [red, greenLike(red), '#10201a'].map((fill) =>
      formOfPhoto(roundPhoto('ball', fill, '#f3ead8')),
    );
    if (!one || !like || !dark) throw new Error('no photo');
    expect(areLookAlikes(one, like)).toBe(true);
    expect(areLookAlikes(one, dark)).toBe(false);
  });

  it('that hardly share a colour differ all over', () => {
    const [one, other] = ['#000000', '#888888'].map((fill) =>
      formOfPhoto(roundPhoto('ball', fill, fill)),
    );
    expect(one && other && insideShare(one, other)).toBe(1);
  });
});

describe('where the outline alone is printed', () => {
  it('silhouettes of such photos are the same', () => {
    for (const [one, other] of PAIRS) {
      const figures = [
        { form: one, fill: 'solid' },
        { form: other, fill: 'solid' },
      ] as const;
      expect(sameFigure(...figures)).toBe(true);
      expect(fairlyDifferent(...figures)).toBe(false);
    }
  });

  it('a page of shadows with two of them is not certain', () => {
    const shadows = DIFFERENT.slice(0, 2).map((form) => ({ form, fill: 'solid' as const }));
    const printed = { models: [{ form: HOUSE }], shadows };
    expect(activityOf('shadows').solve(printed).answers).toHaveLength(2);
  });

  it('a task that their insides tell is printed in full, and no other', () => {
    const saving = { print: 'colour', ink: 'saving' } as const;
    const told = { choices: [[{ form: HOUSE }], { form: BALL }] };
    expect(styleForTask(told, saving)).toEqual({ print: 'colour' });
    expect(styleForTask([{ form: HOUSE }, { form: 'picture-cat' }], saving)).toBe(saving);
  });
});

it('pictures that are always there are judged by outline alone', () => {
  for (const one of PICTURES.slice(0, 12)) {
    for (const other of PICTURES.slice(0, 12)) {
      expect(insideShare(one, other)).toBe(0);
      expect(areToldByInsides(one, other)).toBe(false);
    }
  }
});

describe('halves of a picture', () => {
  const halves = { activity: 'mirror-half', step: 4, page: DEFAULT_PAGE, print: 'colour' } as const;
  const values = { content: 'pictures', response: 'point' } as const;
  const key = knownCopyOf('picture-key');
  const house = idOfOwn(HOUSE);

  it('show own pictures that are the same on both sides, and no others', () => {
    expect(mirrorTurnDeg(HOUSE)).toBe(0);
    expect(mirrorTurnDeg(ownFormOf(key))).toBeUndefined();
    const sheets = Array.from({ length: 12 }, (_, seed) =>
      makeSheet({ ...halves, values, seed, tasks: 1, pictures: { ids: [house, key] } }),
    ).map((made) => JSON.stringify(made.ok ? made.value.tasks : made.refusals));
    expect(sheets.some((text) => text.includes(house))).toBe(true);
    expect(sheets.some((text) => text.includes(key))).toBe(false);
  });

  it('of lopsided ones alone are refused in words', () => {
    const pictures = { ids: [key], alone: true } as const;
    const made = makeSheet({ ...halves, values, seed: 1, pictures });
    expect(made.ok ? '' : made.refusals.map(sentenceOf).join(' ')).toMatch(
      /got "pictures" \(no pictures look the same in this mirror\)\. Did you mean shapes\?/,
    );
  });
});

describe('a tangle', () => {
  const tangle = activityOf('tangle');
  const values = { content: 'pictures', response: 'point' } as const;
  const copies = ['snake', 'bell', 'pencil', 'tulip', 'duck', 'whale', 'bicycle', 'apple'] as const;
  const ids = copies.map((name) => knownCopyOf(`picture-${name}`));
  const photos = DIFFERENT.map(idOfOwn);

  it.each([
    ['beside those that are always there', { ids }],
    ['alone', { ids, alone: true }],
  ] as const)('of own pictures %s is proven on every step that can be asked for', (_, pictures) => {
    const style = { print: 'colour', pictures } as const;
    let shown = 0;
    for (const step of tangle.ladder.keys()) {
      const read = tangle.read(step + 1, values, style);
      for (let seed = 0; read.ok && seed < 8; seed++) {
        const task = tangle.generate(read.value, randomFrom(seed), style);
        expect(tangle.prove(task), `step ${step + 1}, seed ${seed}`).toEqual({ proven: true });
        if (JSON.stringify(task).includes('picture-own-')) shown += 1;
      }
    }
    expect(shown).toBeGreaterThan(20);
  });

  it('never has two of one outline, whatever is inside', () => {
    const style = { print: 'colour', pictures: { ids: photos } } as const;
    for (let seed = 0; seed < 20; seed++) {
      const read = tangle.read(3, values, style);
      if (!read.ok) throw new Error(JSON.stringify(read.refusals));
      const text = JSON.stringify(tangle.generate(read.value, randomFrom(seed), style));
      expect(photos.filter((id) => text.includes(id)).length).toBeLessThanOrEqual(1);
    }
  });

  it('with two of one outline, in a file, is not certain', () => {
    const [one, other] = [{ form: HOUSE }, { form: BALL }];
    const key = { form: 'picture-key' } as const;
    const printed = {
      tangle: [
        { figure: one, x: 0.5, y: 0.5 },
        { figure: key, x: 1.1, y: 0.6 },
      ],
      candidates: [one, key, other],
    };
    expect(tangle.prove({ printed, answer: [0, 1] })).toMatchObject({ proven: false });
  });

  it('of photos of one outline alone is refused in words', () => {
    const made = tangle.read(1, values, {
      print: 'colour',
      pictures: { ids: photos, alone: true },
    });
    expect(made.ok ? '' : made.refusals.map(sentenceOf).join(' ')).toMatch(
      /got "pictures" \(of pictures no more than 1 can be kept from being found in each other\)/,
    );
  });
});

describe('photos of one outline alone', () => {
  const ids = DIFFERENT.map((form) => form.slice('picture-own-'.length));
  const style = { page: DEFAULT_PAGE, print: 'colour', pictures: { ids, alone: true } } as const;
  const wanted = ['find-the-same', 'same-or-different', 'what-changed', 'in-every-box'] as const;

  it.each(wanted)('make proven sheets of %s that their codes make again', (activity) => {
    const values = { content: 'pictures' };
    const made = Array.from({ length: activityOf(activity).ladder.length }, (_, rung) =>
      makeSheet({ ...style, activity, step: rung + 1, values, seed: 11 } satisfies SheetRequest),
    ).find(({ ok }) => ok);
    if (!made?.ok) throw new Error(`${activity} makes none`);
    expect(ids.some((id) => JSON.stringify(made.value.tasks).includes(id))).toBe(true);
    const read = readCode(made.value.code);
    expect(read.ok && makeSheet(read.value)).toEqual(made);
  });

  it('make a pack file that is proven again from itself', () => {
    const part = { activity: 'find-the-same', step: 1, values: { content: 'pictures' }, sheets: 1 };
    const pack = makePack({ ...style, seed: 4, parts: [part as never] });
    if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
    expect(checkPackText(packFileText(pack.value))).toMatchObject({
      ok: true,
      value: { faults: [], notes: [] },
    });
  });
});
