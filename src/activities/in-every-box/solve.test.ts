// The solver against trying every set of figures, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { type Random, randomFrom } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import { inEveryBox } from './index.ts';
import { LADDER } from './ladder.ts';
import { solve } from './solve.ts';
import type { Answer, Box, Printed } from './task.ts';

const COLOUR = { print: 'colour' } as const;
const COLOURS: readonly ColourName[] = ['red', 'yellow', 'blue', 'pink', 'black', 'green'];

function dots(...colours: readonly ColourName[]): Box {
  return { figures: colours.map((colour) => ({ form: 'circle', colour })) };
}

function forms(...names: readonly Figure['form'][]): Box {
  return { figures: names.map((form) => ({ form })) };
}

/** The names of each answer's figures, in the order of the alphabet. */
function answersTo(printed: Printed): readonly (readonly string[])[] {
  return solve(printed).answers.map(({ figures }) =>
    figures.map(({ colour, form = '' }) => colour ?? form).sort(),
  );
}

/** All colours that are in every box, by asking of every set of colours whether it is the largest such. */
function largestCommonSet(boxes: readonly (readonly ColourName[])[]): readonly ColourName[] {
  const sets = Array.from({ length: 2 ** COLOURS.length }, (_, bits) =>
    COLOURS.filter((_, index) => Math.floor(bits / 2 ** index) % 2 === 1),
  );
  const common = sets.filter((set) => boxes.every((box) => set.every((one) => box.includes(one))));
  return common.reduce((most, set) => (set.length > most.length ? set : most), []);
}

describe('the answers of a page', () => {
  test('R1 are the same as those found by trying every set of colours', () => {
    const random = randomFrom(testSeed('in-every-box, solver'));
    for (let run = 0; run < 400; run++) {
      const boxes = Array.from({ length: random.int(2, 4) }, () =>
        random.sample(COLOURS, random.int(1, 5)),
      );
      const expected = largestCommonSet(boxes);
      const found = answersTo({ boxes: boxes.map((colours) => dots(...colours)) });
      expect(found, JSON.stringify(boxes)).toEqual(
        expected.length === 0 ? [] : [[...expected].sort()],
      );
    }
  });

  test('R1 are none where no figure is in every box', () => {
    expect(answersTo({ boxes: [dots('red', 'blue'), dots('pink', 'green')] })).toEqual([]);
  });

  test('R1 do not depend on fields that are left out or stand for what is so anyway', () => {
    const boxes = [
      {
        figures: [{ colour: 'red' as const }, { form: 'circle' as const, colour: 'blue' as const }],
      },
      {
        figures: [
          { form: 'circle' as const, colour: 'red' as const, size: 1, turn: 0 },
          { form: 'star' as const },
        ],
      },
    ];
    expect(answersTo({ boxes })).toEqual([['red']]);
  });

  test('R5 are two where a page can be read two ways: letters that are turned', () => {
    const boxes = [
      forms('small-b', 'small-k', 'small-s'),
      forms('small-d', 'small-k', 'small-x'),
      forms('small-k', 'small-b', 'small-e'),
    ];
    expect(answersTo({ boxes })).toEqual([['small-k'], ['small-b', 'small-d', 'small-k']]);
  });

  test('R5 are two where a page can be read two ways: one shape that lies otherwise', () => {
    const down: Figure = { form: 'arrow', turn: 180 };
    const boxes = [
      { figures: [{ form: 'arrow' as const }, { form: 'star' as const }] },
      { figures: [{ form: 'star' as const }, down] },
    ];
    expect(answersTo({ boxes })).toEqual([['star'], ['arrow', 'arrow', 'star']]);
  });

  test('R5 are one where all figures are of one form, so that only how they lie can be meant', () => {
    const turned = (...turns: readonly number[]): Box => ({
      figures: turns.map((turn): Figure => ({ form: 'arrow', turn })),
    });
    const boxes = [turned(0, 180), turned(90, 0), turned(0, 180)];
    expect(answersTo({ boxes })).toEqual([['arrow']]);
  });

  test('R6 tell a figure from one that differs in a single thing', () => {
    const of = (...pairs: readonly (readonly [ColourName, Figure['form'] & string])[]): Box => ({
      figures: pairs.map(([colour, form]): Figure => ({ colour, form })),
    });
    const boxes = [
      of(['red', 'star'], ['blue', 'star']),
      of(['red', 'heart'], ['blue', 'star']),
      of(['blue', 'star'], ['red', 'star']),
    ];
    expect(answersTo({ boxes })).toEqual([['blue']]);
  });

  test('R5 are two where a page can be read two ways: shapes with nearly one outline', () => {
    const boxes = [forms('hexagon', 'star'), forms('star', 'circle')];
    expect(answersTo({ boxes })).toEqual([['star'], ['circle', 'hexagon', 'star']]);
  });

  test('R5 are one where figures that look alike would change nothing', () => {
    const boxes = [
      forms('small-b', 'small-k'),
      forms('small-d', 'small-k'),
      forms('small-k', 'small-s'),
    ];
    expect(answersTo({ boxes })).toEqual([['small-k']]);
  });

  test('R5 are one for reds, greens and browns, which the palette keeps apart for every sight', () => {
    const boxes = [
      dots('red', 'green', 'brown'),
      dots('orange', 'red', 'blue'),
      dots('purple', 'red', 'green'),
    ];
    expect(answersTo({ boxes })).toEqual([['red']]);
  });
});

interface MadeTask {
  readonly printed: Printed;
  readonly answer: Answer;
}

/** A task at a step of the ladder: step 6 has four boxes of four with two shared and one near miss. */
function taskAt(step: number, changes: Readonly<Record<string, unknown>>, seed: number): MadeTask {
  const read = inEveryBox.read(step, changes, COLOUR);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return inEveryBox.generate(read.value, randomFrom(seed), COLOUR) as MadeTask;
}

function replaced<T>(items: readonly T[], at: number, item: T): readonly T[] {
  return items.map((old, index) => (index === at ? item : old));
}

function withFigure(printed: Printed, box: number, place: number, figure: Figure): Printed {
  return {
    ...printed,
    boxes: printed.boxes.map((shown, index) =>
      index === box ? { ...shown, figures: replaced(shown.figures, place, figure) } : shown,
    ),
  };
}

function placeOf(box: Box | undefined, wanted: Figure | undefined): number {
  return box?.figures.findIndex(({ colour }) => colour === wanted?.colour) ?? -1;
}

/** Each breaks one rule of a sound task of colours. */
const BREAKS: Readonly<Record<string, (task: MadeTask, random: Random) => MadeTask>> = {
  'R1 a shared figure is taken out of one box': ({ printed, answer }, random) => {
    const box = random.int(0, printed.boxes.length - 1);
    const at = placeOf(printed.boxes[box], random.pick(answer.figures));
    return { printed: withFigure(printed, box, at, { form: 'circle', colour: 'white' }), answer };
  },
  'R1 the key names a figure that is not shared': ({ printed, answer }) => {
    const other = printed.boxes[0]?.figures.find(
      (figure) => placeOf({ figures: answer.figures }, figure) < 0,
    );
    return { printed, answer: { figures: other ? replaced(answer.figures, 0, other) : [] } };
  },
  'R1 the key leaves a shared figure out': ({ printed, answer }) => ({
    printed,
    answer: { figures: answer.figures.slice(1) },
  }),
  'R1 the key names a figure twice': ({ printed, answer }) => ({
    printed,
    answer: { figures: answer.figures.map(() => answer.figures[0] ?? {}) },
  }),
  'R2 a near miss is put where it was missing': ({ printed, answer }) => {
    const near = nearMissesOf(printed)[0];
    const box = printed.boxes.findIndex((shown) => placeOf(shown, near) < 0);
    const free = printed.boxes[box]?.figures.findIndex(
      (figure) => placeOf({ figures: answer.figures }, figure) < 0,
    );
    return { printed: withFigure(printed, box, free ?? 0, near ?? {}), answer };
  },
  'R3 a box shows a figure twice': ({ printed, answer }, random) => {
    const box = random.int(0, printed.boxes.length - 1);
    const free = printed.boxes[box]?.figures.findIndex(
      (figure) => placeOf({ figures: answer.figures }, figure) < 0,
    );
    return { printed: withFigure(printed, box, free ?? 0, answer.figures[0] ?? {}), answer };
  },
  'R4 a box holds one figure less': ({ printed, answer }, random) => {
    const at = random.int(0, printed.boxes.length - 1);
    const boxes = printed.boxes.map((box, index) => {
      const shared = (figure: Figure) => placeOf({ figures: answer.figures }, figure) >= 0;
      const gone = box.figures.find((figure) => !shared(figure));
      return index === at ? { figures: box.figures.filter((figure) => figure !== gone) } : box;
    });
    return { printed: { ...printed, boxes }, answer };
  },
  'R8 all boxes hold the same': ({ printed, answer }) => {
    const [first = { figures: [] }] = printed.boxes;
    return { printed: { ...printed, boxes: printed.boxes.map(() => first) }, answer };
  },
  'R8 there is only one box': ({ printed, answer }) => ({
    printed: { ...printed, boxes: printed.boxes.slice(0, 1) },
    answer,
  }),
  'R9 one empty circle too many': ({ printed, answer }) => ({
    printed: { ...printed, circles: (printed.circles ?? 0) + 1 },
    answer,
  }),
  'R9 one empty circle too few': ({ printed, answer }) => ({
    printed: { ...printed, circles: (printed.circles ?? 0) - 1 },
    answer,
  }),
  'R9 one of the dots for stickers is a heart': ({ printed, answer }) => {
    const [shared] = answer.figures;
    const box = printed.boxes.findIndex(({ figures }) => figures.some((one) => one !== shared));
    const at = placeOf(printed.boxes[box], shared) === 0 ? 1 : 0;
    const figure = printed.boxes[box]?.figures[at];
    return { printed: withFigure(printed, box, at, { ...figure, form: 'heart' }), answer };
  },
  'R9 stickers of no told size': ({ printed: { stickerMm: _, ...printed }, answer }) => ({
    printed,
    answer,
  }),
  'R9 circles without stickers': ({ printed, answer }) => ({
    printed: { ...printed, response: 'ring' },
    answer,
  }),
};

function nearMissesOf({ boxes }: Printed): readonly Figure[] {
  const figures = boxes.flatMap((box) => box.figures);
  return figures.filter(
    (figure) => boxes.filter((box) => placeOf(box, figure) >= 0).length === boxes.length - 1,
  );
}

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 12; run++) {
      const random = randomFrom(seed + run);
      const sound = taskAt(6, { response: 'sticker' }, seed + run);
      expect(inEveryBox.prove(sound), `seed ${seed + run}`).toEqual({ proven: true });
      const broken = BREAKS[name]?.(sound, random) ?? sound;
      expect(inEveryBox.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });

  test('R10 two loose figures overlap, one crosses the line of the box, or one has no place', () => {
    const seed = testSeed('R10 loose figures');
    const sound = taskAt(LADDER.length - 2, {}, seed);
    expect(inEveryBox.prove(sound)).toEqual({ proven: true });
    const [first = { figures: [] }, ...others] = sound.printed.boxes;
    const places = first.places ?? [];
    const near = places.map(({ x, y }, index) => (index === 0 ? { x: x + 5, y } : { x, y }));
    const onTop = replaced(near, 1, near[0] ?? { x: 0, y: 0 });
    const outside = places.map(({ x, y }, index) => (index === 0 ? { x: 2, y } : { x, y }));
    for (const wrong of [onTop, outside, places.slice(1)]) {
      const printed = { ...sound.printed, boxes: [{ ...first, places: wrong }, ...others] };
      expect(inEveryBox.prove({ ...sound, printed }).proven).toBe(false);
    }
  });

  test('R10 corners of loose figures touch before their middles are near', () => {
    const [square, heart, star]: readonly Figure[] = [
      { form: 'square' },
      { form: 'heart' },
      { form: 'star', size: 0.5 },
    ];
    const far = { x: 15, y: 15 };
    const faultsWith = (x: number, y: number) =>
      solve({
        boxes: [
          { figures: [square, heart], places: [far, { x: far.x + x, y: far.y + y }] },
          { figures: [square, star] },
        ].map(({ figures, places }) => ({ figures: figures as readonly Figure[], places })),
      }).faults.map(({ key }) => key);
    expect(faultsWith(18, 18)).toEqual(['fault.touching']);
    expect(faultsWith(24, 0)).toEqual([]);
  });
});

test('a task written by hand with boxes and answer alone is proven', () => {
  const printed = { boxes: [dots('red', 'blue'), dots('yellow', 'red'), dots('red', 'green')] };
  const answer = { figures: [{ form: 'circle', colour: 'red' }] };
  expect(inEveryBox.prove({ printed, answer })).toEqual({ proven: true });
});
