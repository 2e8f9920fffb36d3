// The promises of pieces to cut out, over every activity, step and way to answer that has them.
import { describe, expect, test } from 'vitest';
import {
  ACTIVITY_IDS,
  type Activity,
  activityOf,
  type Piece,
  type Size,
  type Task,
} from '../../src/activities/index.ts';
import { randomFrom } from '../../src/base/index.ts';
import { type Figure, figureName } from '../../src/figures/index.ts';
import type { Area, Group, PrintStyle } from '../../src/page/index.ts';
import { blankBetween, boundsOf, groupsOf, outsideOf } from '../scene-bounds.ts';

const RIGHT: PrintStyle = { print: 'colour' };
/** For the left hand what is given may stand on another side; so many tasks of each kind are made for each. */
const HANDS = [
  { style: RIGHT, seeds: 3 },
  { style: { ...RIGHT, hand: 'left' }, seeds: 1 },
] as const satisfies readonly { readonly style: PrintStyle; readonly seeds: number }[];

interface Cut {
  readonly name: string;
  readonly activity: Activity;
  readonly task: Task;
  readonly style: PrintStyle;
  readonly size: Size;
  readonly pieces: readonly Piece[];
}

/** Tasks of every step with every way to answer, for either hand, at their least size and with room to spare. */
function cutsOf(activity: Activity): readonly Cut[] {
  const response = activity.parameters.response;
  const ways = response?.kind === 'choice' ? response.values : [];
  return activity.ladder.flatMap((_, index) =>
    [undefined, ...ways].flatMap((way) =>
      HANDS.flatMap(({ style, seeds }) => cutsIn(activity, index + 1, way, style, seeds)),
    ),
  );
}

function cutsIn(
  activity: Activity,
  step: number,
  way: string | undefined,
  style: PrintStyle,
  seeds: number,
): readonly Cut[] {
  const values = activity.read(step, way === undefined ? {} : { response: way }, style);
  if (!values.ok) return [];
  return Array.from({ length: seeds }, (_, seed) => seed).flatMap((seed) => {
    const task = activity.generate(values.value, randomFrom(seed), style);
    const { widthMm, heightMm } = activity.room(task.printed, style);
    return [1, 1.2].map((scale) => {
      const size = { widthMm: scale * widthMm, heightMm: scale * heightMm };
      const hand = style.hand ?? 'right';
      const name = `${activity.id}, step ${step}, ${way}, ${hand} hand, seed ${seed}, times ${scale}`;
      return { name, activity, task, style, size, pieces: activity.pieces(task, size, style) };
    });
  });
}

const belonging = ({ pieces }: Cut) => pieces.filter(({ place }) => place !== undefined);
const WITH_PIECES = ACTIVITY_IDS.map((id) => cutsOf(activityOf(id)).filter(isCut)).filter(
  (cuts) => cuts.length > 0,
);

function isCut({ pieces }: Cut): boolean {
  return pieces.length > 0;
}

test('the activities with figures in empty places have pieces, and no others', () => {
  expect(WITH_PIECES.map(([first]) => first?.activity.id).toSorted()).toEqual([
    'continue-row',
    'copy-pattern',
    'crossing-table',
    'mirror-half',
    'missing-part',
    'one-of-each',
    'size-order',
  ]);
});

describe.each(WITH_PIECES.map((cuts) => [cuts[0]?.activity.id, cuts] as const))('%s', (_, cuts) => {
  test('its pieces are exactly the figures that the answer draws into the empty places', () => {
    for (const cut of cuts) {
      const given = belonging(cut).flatMap(({ figures }) => namesOf(figures, cut));
      expect(given.toSorted(), cut.name).toEqual(wantedNames(cut).toSorted());
    }
  });

  test('each shows its own figures, in the place where the answer draws them', () => {
    for (const cut of cuts) {
      for (const { figures, drawing, place } of cut.pieces) {
        const own = namesOf(figures, cut);
        expect(names(groupsOf(drawing, 'figure')), cut.name).toEqual(own);
        if (!place || !isDrawnIn(cut)) continue;
        const there = answerFigures(cut).filter((figure) => isIn(boundsOf(figure), place));
        expect(names(there), cut.name).toEqual(own);
      }
    }
  });

  test('all of a task are drawn as large as in the answer, or all smaller by the same share', () => {
    for (const cut of cuts.filter(isDrawnIn)) {
      const shares = belonging(cut).flatMap(({ drawing, place }) => {
        const [onPiece] = groupsOf(drawing, 'figure');
        const there = answerFigures(cut).find((each) => place && isIn(boundsOf(each), place));
        return onPiece && there ? [widthOf(onPiece) / widthOf(there)] : [];
      });
      expect(Math.max(...shares), cut.name).toBeLessThan(1.001);
      if (isSized(cut))
        expect(Math.min(...shares), cut.name).toBeGreaterThan(0.9 * Math.max(...shares));
    }
  });

  test('each is a little smaller than its place, and the places lie apart on the task', () => {
    for (const cut of cuts) {
      const places = belonging(cut).flatMap(({ place }) => (place ? [place] : []));
      for (const { widthMm, heightMm, place } of belonging(cut)) {
        if (!place) continue;
        expect(place.width - widthMm, cut.name).toBeGreaterThan(0.99);
        expect(place.height - heightMm, cut.name).toBeGreaterThan(0.99);
        expect(isIn(boundsFrom(place), whole(cut.size)), cut.name).toBe(true);
      }
      for (const [index, one] of places.entries()) {
        for (const other of places.slice(index + 1)) {
          const blank = blankBetween(boundsFrom(one), boundsFrom(other));
          expect(blank, cut.name).toBeGreaterThan(-0.01);
        }
      }
    }
  });

  test('nothing is drawn beyond the edge of a piece, and each is large enough for a small hand', () => {
    for (const { pieces, name } of cuts) {
      for (const { drawing, widthMm, heightMm } of pieces) {
        expect(outsideOf(drawing, widthMm, heightMm), name).toEqual([]);
        expect(Math.min(widthMm, heightMm), name).toBeGreaterThan(10);
      }
    }
  });

  test('pieces that belong nowhere are figures that the task itself offers', () => {
    for (const { pieces, task, name } of cuts) {
      const printed = JSON.stringify(task.printed);
      for (const { figures } of pieces.filter(({ place }) => place === undefined)) {
        for (const figure of figures) expect(printed, name).toContain(JSON.stringify(figure));
      }
    }
  });
});

function names(groups: readonly { readonly alt?: string }[]): readonly string[] {
  return groups.map(({ alt = '' }) => alt);
}

function answerFigures({ activity, task, style, size }: Cut) {
  const drawn = activity.draw(task, size, style, true);
  return groupsOf(drawn, 'answer').flatMap((answer) => groupsOf(answer, 'figure'));
}

/** A half that is chosen is ringed, and what is joined has a line: there the answer itself tells the figures. */
function isDrawnIn(cut: Cut): boolean {
  return answerFigures(cut).length > 0;
}

function wantedNames(cut: Cut): readonly string[] {
  if (isDrawnIn(cut)) return names(answerFigures(cut));
  const { answer, printed } = cut.task as {
    answer: { choice?: number; figures?: readonly Figure[] };
    printed: { offered?: readonly { cells: readonly (Figure | null)[] }[] };
  };
  const half = printed.offered?.[answer.choice ?? -1]?.cells ?? [];
  return namesOf(answer.figures ?? half.filter((figure) => figure !== null), cut);
}

/** An activity that draws sizes truly names the looks alone. */
function namesOf(figures: readonly Figure[], { activity }: Cut): readonly string[] {
  return figures.map((figure) =>
    figureName(activity.id === 'size-order' ? { ...figure, size: undefined } : figure),
  );
}

function isSized({ pieces }: Cut): boolean {
  return pieces.some(({ figures }) => figures.some(({ size = 1 }) => size < 1));
}

function widthOf(node: Group): number {
  const { left, right } = boundsOf(node);
  return right - left;
}

function boundsFrom({ left, top, width, height }: Area) {
  return { left, top, right: left + width, bottom: top + height };
}

function whole({ widthMm, heightMm }: Size): Area {
  return { left: 0, top: 0, width: widthMm, height: heightMm };
}

function isIn(inner: ReturnType<typeof boundsFrom>, outer: Area): boolean {
  const { left, top, right, bottom } = boundsFrom(outer);
  // Half of a frame's line may lie on the edge.
  const slack = 0.6;
  return (
    inner.left > left - slack &&
    inner.top > top - slack &&
    inner.right < right + slack &&
    inner.bottom < bottom + slack
  );
}
