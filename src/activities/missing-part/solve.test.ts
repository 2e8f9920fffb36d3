// The solver on fields written by hand with one reading, with two, and with one rule broken.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { testSeed } from '../../../tests/seed.ts';
import { type Figure, fairlyDifferent } from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import { missingPart } from './index.ts';
import { solve as findings } from './solve.ts';
import type { Printed } from './task.ts';
import { rightOf, taskOf, valuesAt } from './tasks-to-test.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

const COLOURS: Readonly<Record<string, ColourName>> = {
  a: 'red',
  b: 'yellow',
  c: 'blue',
  d: 'pink',
};

function dot(letter: string): Figure | null {
  const colour = COLOURS[letter];
  return colour ? { form: 'circle', colour } : null;
}

/** A field of dots by letters, rows divided by blanks; a full stop is missing. */
function fieldOf(rows: string): Pick<Printed, 'field' | 'columns'> {
  const field = [...rows.replaceAll(' ', '')].map(dot);
  return { field, columns: rows.split(' ')[0]?.length ?? 0 };
}

/** What may stand in the hole, in the order of the alphabet. */
function answersTo(rows: string): readonly string[] {
  const letter = (figure: Figure) =>
    Object.keys(COLOURS).find((name) => COLOURS[name] === figure.colour) ?? '?';
  return solve({ ...fieldOf(rows), response: 'draw' })
    .answers.map(({ figures }) => figures.map(letter).join(''))
    .sort();
}

describe('readings of a field', () => {
  test.each<[string, string, readonly string[]]>([
    ['R1 rows', 'aaa b.b aaa', ['b']],
    ['R1 columns', 'aba aba ab.', ['a']],
    ['R1 checker, hole in a corner', '.ba bab aba', ['a']],
    ['R1 three in turn along the slant', 'abc bca ca.', ['b']],
    ['R1 four in a square', 'abab cdcd ab.b cdcd', ['a']],
    ['R1 a piece of two', 'abab baba a..b baba', ['ba']],
    ['R2 nothing but a mirror tells', 'abc dad cb.', ['a']],
    ['R3 nothing but the sets tell', 'abc cba b.a', ['c']],
  ])('%s: %s', (_, rows, wanted) => {
    expect(answersTo(rows)).toEqual(wanted);
  });

  test('R2 two symmetries that disagree make two answers', () => {
    // Left and right are alike, so b; and it is alike on both sides of the slant from the first place, so a.
    expect(answersTo('aba bb. aaa')).toEqual(['a', 'b']);
  });

  test('where no figure comes twice, nothing tells', () => {
    const field = [1, 2, 3, 4, null, 5, 6, 7, 8].map((numeral) =>
      numeral === null ? null : { form: `numeral-${numeral}` as const },
    );
    const { answers, faults } = solve({ field, columns: 3, response: 'draw' });
    expect(answers).toEqual([]);
    expect(faults).toContain('nothing on the page tells what is missing');
  });

  test('R4 colours follow the columns and forms the rows', () => {
    const forms = ['heart', 'star', 'heart'] as const;
    const colours = ['red', 'blue', 'yellow'] as const;
    const field = forms.flatMap((form) => colours.map((colour): Figure => ({ form, colour })));
    const { answers, faults } = solve({
      field: field.with(5, null as never),
      columns: 3,
      response: 'draw',
    });
    expect(faults).toEqual([]);
    expect(answers).toEqual([{ figures: [{ form: 'star', colour: 'yellow' }] }]);
  });

  test('a circle that is turned, or a field that says its default, is the same figure', () => {
    const { field, columns } = fieldOf('aaa b.b aaa');
    const turned = field.map((figure, place) =>
      figure && place % 2 === 0 ? { ...figure, turn: 90, fill: 'solid' as const } : figure,
    );
    expect(solve({ field: turned, columns, response: 'draw' }).answers.length).toBe(1);
  });
});

const RED: Figure = { form: 'circle', colour: 'red' };
const YELLOW: Figure = { form: 'circle', colour: 'yellow' };
const BLUE: Figure = { form: 'circle', colour: 'blue' };

function proves(rows: string, offered: Printed['offered'], right = YELLOW): boolean {
  const printed = { ...fieldOf(rows), ...(offered ? { offered } : {}) };
  return missingPart.prove({ printed, answer: { figures: [right] } }).proven;
}

test('a task written by hand with field, pieces and answer is proven', () => {
  expect(proves('aaa b.b aaa', [[RED], [YELLOW], [BLUE]])).toBe(true);
});

describe('one rule broken is not proven', () => {
  test('R1 the key is another figure', () => {
    expect(proves('aaa b.b aaa', [[RED], [YELLOW]], RED)).toBe(false);
  });

  test.each<[string, Printed['offered']]>([
    ['no piece fits', [[RED], [BLUE]]],
    ['two pieces fit', [[RED], [YELLOW], [YELLOW]]],
    ['all pieces fit', [[YELLOW]]],
    ['two wrong pieces are alike', [[RED], [RED], [YELLOW]]],
    ['a piece is larger than the hole', [[RED, RED], [YELLOW]]],
  ])('R5 %s', (_, offered) => {
    expect(proves('aaa b.b aaa', offered)).toBe(false);
  });

  test('R6 a wrong piece hardly differs from the right one', () => {
    expect(proves('aaa b.b aaa', [[{ ...YELLOW, size: 0.9 }], [YELLOW]])).toBe(false);
  });

  test('R6 figures of the field are hardly told apart', () => {
    const [one, other]: readonly Figure[] = [{ form: 'pentagon' }, { form: 'hexagon' }];
    if (!one || !other) throw new Error('two figures are needed');
    expect(fairlyDifferent(one, other)).toBe(false);
    const field = [one, one, one, other, null, other, one, one, one];
    const printed = { field, columns: 3, offered: [[other], [RED]] };
    expect(missingPart.prove({ printed, answer: { figures: [other] } }).proven).toBe(false);
  });

  test.each([
    ['two holes apart', 'a.a bbb a.a'],
    ['a hole round a corner', 'a..a b.bb aaaa bbbb'],
    ['no hole', 'aaa bbb aaa'],
  ])('R7 %s', (_, rows) => {
    const { answers, faults } = solve({ ...fieldOf(rows), response: 'draw' });
    expect([answers.length, faults.length]).toEqual([0, 1]);
  });

  test('R7 the last row is not full', () => {
    const { field } = fieldOf('aaa b.b aaa');
    expect(solve({ field: field.slice(1), columns: 3, response: 'draw' }).faults.length).toBe(1);
  });

  test('no pieces are offered to a child that points', () => {
    expect(solve({ ...fieldOf('aaa b.b aaa'), response: 'point' }).faults.length).toBe(1);
  });

  test('R5, R8 made pages with another figure in the field, or the right piece changed', () => {
    const seed = testSeed('missing-part, broken pages');
    for (let run = 0; run < 20; run++) {
      const made = taskOf(valuesAt(9), seed + run);
      const { printed, answer, name } = made;
      expect(missingPart.prove({ printed, answer }), name).toEqual({ proven: true });
      const offered = (printed.offered ?? []).with(rightOf(made), [
        { form: 'numeral-8' },
        { form: 'numeral-8' },
      ]);
      expect(missingPart.prove({ printed: { ...printed, offered }, answer }).proven, name).toBe(
        false,
      );
      const place = printed.field.findIndex((figure) => figure !== null);
      const field = printed.field.with(place, { form: 'numeral-8' });
      expect(missingPart.prove({ printed: { ...printed, field }, answer }).proven, name).toBe(
        false,
      );
    }
  });
});

test('what is answered names the piece and its position', () => {
  const words = missingPart.words.en;
  const printed = { ...fieldOf('aaa b.b aaa'), offered: [[RED], [YELLOW]] };
  expect(words.answer(printed, { figures: [YELLOW] })).toBe(
    'The second piece fits: yellow circle.',
  );
  expect(words.describe(printed)).toBe(
    'A pattern in three rows: red circle, red circle, red circle; yellow circle, the hole, yellow circle; red circle, red circle, red circle. To choose from: 1 red circle; 2 yellow circle.',
  );
});
