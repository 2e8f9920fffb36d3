// What is said, laid out and read from a file.
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import type { Figure, FormId } from '../../figures/index.ts';
import { copyPattern } from './index.ts';
import { materialsOf } from './materials.ts';
import type { Cells, Printed } from './task.ts';

const { en } = copyPattern.words;
const red: Figure = { colour: 'red' };
const blue: Figure = { colour: 'blue' };
const MODEL: Cells = [red, blue, null, red];
const EMPTY: Cells = [null, null, null, null];
const dots: Printed = {
  model: { rows: 2, columns: 2, cells: MODEL },
  boxes: [{ cells: EMPTY }, { cells: [red, null, null, null] }],
  stickerMm: 19,
};
const finished = dots.boxes.map(() => ({ cells: MODEL }));

const NET: Cells = [
  { form: 'sign-level-line' },
  null,
  null,
  null,
  null,
  { form: 'sign-upright-line', turn: 135 },
];
const net: Printed = {
  model: { rows: 2, columns: 2, cells: NET },
  boxes: [{ cells: NET.map(() => null) }],
};

describe('words', () => {
  it('every step has its sentence, and every choice its words', () => {
    expect(en.steps).toHaveLength(copyPattern.ladder.length);
    for (const [name, parameter] of Object.entries(copyPattern.parameters)) {
      if (parameter.kind !== 'choice') continue;
      expect(Object.keys(en.parameters[name]?.choices ?? {}).sort()).toEqual(
        [...parameter.values].sort(),
      );
    }
  });

  it('describes the model place by place and the boxes as they are', () => {
    expect(en.describe(dots)).toBe(
      'Model: 2 rows of 2 cells: row 1 red dot, blue dot; row 2 empty, red dot. Box 1 is empty. ' +
        'Box 2 has row 1 red dot, empty; row 2 empty, empty.',
    );
    expect(en.describe(net)).toBe(
      'Model: 2 rows of 2 points, 2 lines: from row 1 point 1 to row 1 point 2; ' +
        'from row 1 point 1 to row 2 point 2. Box 1 is empty.',
    );
  });

  it('says how much is to be added, and whether a mirrored copy would show', () => {
    expect(en.answer(dots, finished)).toBe(
      'Every box becomes the model: 3 dots in the same places, 2 to 3 of them to be added in each. The model has a mirror line.',
    );
  });

  it('R10 warns of boxes that would take a mirrored copy, and of no others', () => {
    expect(en.show(dots)).toMatch('printed in box 1 and box 2 would also fit');
    const cross: Cells = [null, red, null, red, red, red, null, red, null];
    const model = { rows: 3, columns: 3, cells: cross };
    expect(en.show({ model, boxes: [{ cells: cross.map(() => null) }] })).not.toMatch(
      'would also fit',
    );
  });

  it('names what is drawn, letters and signs as well as dots', () => {
    const letters: Cells = [{ form: 'capital-K' }, null, { form: 'capital-S' }, null];
    const model = { rows: 2, columns: 2, cells: letters };
    const printed: Printed = { model, boxes: [{ cells: EMPTY }] };
    expect(en.say(printed)[1]).toBe('Draw a letter wherever this one has a letter, just like it.');
    expect(en.describe(printed)).toMatch('row 1 capital K, empty; row 2 capital S, empty');
    expect(materialsOf(printed, [{ cells: letters }])).toEqual([{ kind: 'pencil' }]);
  });

  it('calls the numerals of every script numbers, and their letters letters', () => {
    const sayOf = (content: Printed['content'], forms: readonly [FormId, FormId]) => {
      const cells: Cells = [{ form: forms[0] }, null, { form: forms[1] }, null];
      const model = { rows: 2, columns: 2, cells };
      return en.say({ model, boxes: [{ cells: EMPTY }], content })[1];
    };
    const numbers = 'Draw a number wherever this one has a number, just like it.';
    expect(sayOf('numerals', ['numeral-3', 'numeral-4'])).toBe(numbers);
    expect(sayOf('devanagari-numerals', ['numeral-२', 'numeral-३'])).toBe(numbers);
    expect(sayOf('arabic-indic-numerals', ['numeral-٢', 'numeral-٤'])).toBe(numbers);
    expect(sayOf('greek-capitals', ['letter-Γ', 'letter-Δ'])).toMatch('Draw a letter');
  });

  it('speaks of what is there already only where something is', () => {
    expect(en.say(dots).join(' ')).toMatch('there already');
    expect(en.say(net).join(' ')).not.toMatch('there already');
  });
});

describe('materials', () => {
  it('counts a sticker for each dot that is missing, by colour', () => {
    expect(materialsOf(dots, finished)).toEqual([
      { kind: 'sticker', colour: 'red', diameterMm: 19, count: 3 },
      { kind: 'sticker', colour: 'blue', diameterMm: 19, count: 2 },
    ]);
  });

  it('asks for a crayon of each colour to be filled, and for a pencil where dots or lines are drawn', () => {
    expect(materialsOf({ ...dots, response: 'colour-in' }, finished)).toEqual([
      { kind: 'crayon', colour: 'red' },
      { kind: 'crayon', colour: 'blue' },
    ]);
    expect(materialsOf(net, [{ cells: NET }])).toEqual([{ kind: 'pencil' }]);
  });

  it('lays out nothing that no box needs', () => {
    const begun: Printed = { ...dots, boxes: [{ cells: [red, null, null, red] }] };
    expect(materialsOf(begun, [{ cells: MODEL }])).toEqual([
      { kind: 'sticker', colour: 'blue', diameterMm: 19, count: 1 },
    ]);
  });
});

describe('reading a file', () => {
  it('refuses unknown fields, sides out of range and too many boxes', () => {
    const bad = [
      { ...dots, extra: 1 },
      { ...dots, model: { ...dots.model, rows: 6 } },
      { ...dots, boxes: Array.from({ length: 7 }, () => ({ cells: EMPTY })) },
      { ...dots, boxes: [] },
      { ...dots, stickerMm: 400 },
      { ...dots, response: 'eat' },
    ];
    for (const printed of bad) expect(copyPattern.printed.safeParse(printed).success).toBe(false);
    expect(copyPattern.printed.safeParse(dots).success).toBe(true);
  });

  it('a page with the required facts alone is proven, drawn and described like the full one', () => {
    const read = copyPattern.read(13, {}, { print: 'colour' });
    if (!read.ok) throw new Error('step 13 is invalid');
    const { printed, answer } = copyPattern.generate(read.value, randomFrom(2), {
      print: 'colour',
    });
    const { model, boxes } = copyPattern.printed.parse(printed) as Printed;
    const bare = { model, boxes };
    expect(copyPattern.prove({ printed: bare, answer })).toEqual({ proven: true });
    expect(copyPattern.room(bare)).toEqual(copyPattern.room(printed));
    expect(en.describe(bare)).toBe(en.describe(printed));
  });
});
