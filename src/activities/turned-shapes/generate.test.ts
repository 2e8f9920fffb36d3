// Promises of the generator over its whole range of values, checked on the printed fields and on outlines.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { randomFrom } from '../../base/index.ts';
import {
  characterOf,
  type Figure,
  type FormId,
  formOf,
  formsOf,
  isLetter,
  isNumeral,
  isPicture,
  measureOutlineShare,
  outlineShare,
  SHAPE_FLOOR,
  SHAPES,
} from '../../figures/index.ts';
import { drawOthers, modelForms } from './generate-forms.ts';
import { turnedShapes } from './index.ts';
import { CONTENTS, PARAMETERS, type TurnedContent } from './task.ts';
import { anyTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(300, testSeed('turned-shapes, generated tasks'));
const SIZES_OF = { none: [1], bigger: [1 / 0.6], smaller: [0.6], both: [1 / 0.75, 0.55 / 0.75] };

describe('every task of valid values', () => {
  test('is proven', () => {
    for (const made of MADE) expect(turnedShapes.prove(made), made.name).toEqual({ proven: true });
  });

  test('R1 has the wanted number of choices, and the wanted number of them with the form of the model', () => {
    for (const { values, printed, right, name } of MADE) {
      const same = printed.choices.filter(
        (figure) => figure.form === printed.model.form && !figure.mirrored,
      );
      expect(printed.choices.length, name).toBe(values.choices);
      expect(same.length, name).toBe(values.matches);
      expect(right, name).toEqual(same);
    }
  });

  test('R3 turns right ones by the wanted turn, and not where none is wanted', () => {
    const wanted = { none: [0], quarter: [90, 270], half: [180], eighth: [45, 135, 225, 315] };
    for (const { values, printed, right, name } of MADE) {
      expect(printed.model.turn ?? 0, name).toBe(0);
      for (const { turn = 0 } of right) expect(wanted[values.turn], name).toContain(turn);
    }
  });

  test('R5 has right ones of the wanted size, and a wrong one of the size of a right one', () => {
    for (const { values, printed, right, wrong, name } of MADE) {
      for (const { size = 1 } of right) {
        const ratio = size / (printed.model.size ?? 1);
        const near = SIZES_OF[values.resize].some((one) => Math.abs(one - ratio) < 0.001);
        expect(near, name).toBe(true);
      }
      expect(
        wrong.some((figure) => right.some(({ size }) => size === figure.size)),
        name,
      ).toBe(true);
    }
  });

  test('R6 has the colour of the model on no right one where colours differ, on a wrong one only as a lure', () => {
    for (const { values, printed, right, wrong, name } of MADE) {
      const hasColour = (figure: Figure) => figure.colour === printed.model.colour;
      if (values.colours === 'one') {
        expect(printed.choices.every(hasColour), name).toBe(true);
        continue;
      }
      expect(right.some(hasColour), name).toBe(false);
      expect(wrong.filter(hasColour).length, name).toBe(values.colours === 'lure' ? 1 : 0);
    }
  });

  test('R7 has the mirror image of the model once where it is asked for, and nothing mirrored else', () => {
    for (const { values, printed, name } of MADE) {
      const mirrored = printed.choices.filter((figure) => figure.mirrored);
      expect(mirrored.length, name).toBe(values.mirrors ? 1 : 0);
      for (const figure of mirrored) expect(figure.form, name).toBe(printed.model.form);
    }
    expect(MADE.some(({ values }) => values.mirrors)).toBe(true);
  });

  test('R8 has wrong ones of one form, or each of its own', () => {
    for (const { values, wrong, name } of MADE) {
      const forms = wrong.filter((figure) => !figure.mirrored).map(formOf);
      expect(new Set(forms).size, name).toBe(values.mixed ? forms.length : 1);
    }
  });
});

describe('R2 no other form fits a shape', () => {
  const MOST = 7;
  const together = (model: FormId) =>
    Array.from({ length: 12 }, (_, seed) =>
      drawOthers({ content: 'shapes', likeness: 'near' }, model, MOST, randomFrom(seed)),
    );

  test('at any turn in steps of 15 degrees but for its fair share', () => {
    const turns = Array.from({ length: 24 }, (_, step) => 15 * step);
    for (const model of SHAPES) {
      for (const other of new Set(together(model).flat())) {
        const shares = turns.map((turn) =>
          measureOutlineShare({ form: model }, { form: other, turn }),
        );
        expect(Math.min(...shares), `${model} and ${other}`).toBeGreaterThanOrEqual(SHAPE_FLOOR);
      }
    }
  });

  test('and a square never meets a diamond, as model or beside one', () => {
    for (const model of SHAPES) {
      for (const others of together(model)) {
        const all = [model, ...others];
        expect(all.includes('square') && all.includes('diamond'), all.join(' ')).toBe(false);
      }
    }
  });
});

const CHARACTERS = CONTENTS.filter((content) => {
  const [form] = formsOf(content);
  return form !== undefined && (isLetter(form) || isNumeral(form));
});

/** All letters of the script, capitals and small ones, and for Latin the numerals. */
function scriptOf(content: TurnedContent): readonly FormId[] {
  const families: readonly (readonly TurnedContent[])[] = [
    ['capitals', 'small-letters', 'numerals'],
    ['cyrillic-capitals', 'cyrillic-small'],
    ['greek-capitals', 'greek-small'],
  ];
  const family = families.find((members) => members.includes(content)) ?? [content];
  return family.flatMap((member) => formsOf(member));
}

describe('R4 letters and numerals that are turned', () => {
  test.each(CHARACTERS)(
    'of %s are at least 0.33 of their outline away from every other upright one',
    (content) => {
      const models = modelForms({ content, turn: 'quarter', mirrors: false });
      expect(models.length).toBeGreaterThan(1);
      for (const form of models) {
        for (const other of scriptOf(content)) {
          if (other === form) continue;
          for (const turn of [90, 180, 270]) {
            const share = measureOutlineShare({ form, turn }, { form: other });
            expect(share, `${form} turned ${turn}, ${other}`).toBeGreaterThanOrEqual(0.33);
          }
        }
      }
    },
  );

  test('are none that readers take for another', () => {
    const known = [...'bdpqnumwMWNZz69CUcESs5ae'];
    for (const content of CHARACTERS.slice(0, 3)) {
      for (const turn of ['quarter', 'half'] as const) {
        for (const form of modelForms({ content, turn, mirrors: false })) {
          const character = isLetter(form) || isNumeral(form) ? characterOf(form) : '';
          expect(known, form).not.toContain(character);
        }
      }
    }
  });
});

test('R3 a form that is turned looks otherwise than upright, by a tenth of its outline, a picture by more', () => {
  for (const content of CONTENTS) {
    for (const turn of PARAMETERS.turn.values) {
      if (turn === 'none' || (turn === 'eighth' && content !== 'shapes')) continue;
      const degrees = { quarter: 90, half: 180, eighth: 45 }[turn];
      for (const form of modelForms({ content, turn, mirrors: false })) {
        const share = outlineShare({ form }, { form, turn: degrees });
        expect(share, `${form} turned ${degrees}`).toBeGreaterThan(isPicture(form) ? 0.15 : 0.1);
      }
    }
  }
});

test('over many tasks the right one stands in each place equally often', () => {
  const runs = 400;
  const tasks = Array.from({ length: runs }, (_, seed) => taskOf(valuesAt(4), seed));
  // Five standard deviations of a quarter in so many throws.
  const slack = 5 * Math.sqrt(3 / 16 / runs);
  for (const place of [0, 1, 2, 3]) {
    const share = tasks.filter(({ answer }) => answer[0] === place).length / runs;
    expect(Math.abs(share - 1 / 4)).toBeLessThan(slack);
  }
});
