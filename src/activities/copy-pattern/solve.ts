// Finds every way to finish the printed boxes so that each is the same as the printed model, and what makes the page unfit.
import type { Findings } from '../activity.ts';
import { boxFaults, modelFaults } from './solve-faults.ts';
import { fits, marksOf, spotsOf } from './solve-reading.ts';
import { viewsOf } from './solve-views.ts';
import type { Answer, Box, Cells, Model, Printed } from './task.ts';

/** Answers are cut off here. */
const MOST_ANSWERS = 20;

/**
 * The frame is printed in every box, upright and in the model's proportions, so that "the same" means the
 * same mark on the same spot: a box has as many completions as there are ways to fill its free spots so.
 */
export function solve(printed: Printed): Findings<Answer> {
  const { model, boxes } = printed;
  const faults = [
    ...modelFaults(printed),
    ...boxes.flatMap((_, index) => boxFaults(printed, index)),
  ];
  const finished = boxes.map((box) => completionsOf(box, model));
  return { answers: combinations(finished).slice(0, MOST_ANSWERS), faults };
}

/** All fillings of the free spots after which nothing tells the box from the model. */
function completionsOf(box: Box, model: Model): readonly Box[] {
  if (box.cells.length !== model.cells.length || !spotsOf(model)) return [];
  if (!fits(marksOf(box.cells, model), marksOf(model.cells, model))) return [];
  return [{ cells: fillFree(box.cells, model.cells) }];
}

function fillFree(given: Cells, model: Cells): Cells {
  return model.map((figure, index) => given[index] ?? figure);
}

/** One choice for each box, in all ways. */
function combinations(choices: readonly (readonly Box[])[]): readonly Answer[] {
  return choices.reduce<readonly Answer[]>(
    (answers, boxes) =>
      answers.flatMap((answer) => boxes.map((box) => [...answer, box])).slice(0, MOST_ANSWERS),
    [[]],
  );
}

/** A box in which a child who turns or mirrors the model meets nothing that says no. */
export interface Lookalike {
  /** The number of the box, 0 upward. */
  readonly box: number;
  readonly way: 'mirrored' | 'turned';
}

/**
 * Boxes whose givens fit a mirrored or turned model as well as the model. They are no second answer, for
 * the frame fixes every place, but the adult may want to watch there.
 */
export function lookalikesOf({ model, boxes }: Printed): readonly Lookalike[] {
  const spots = spotsOf(model);
  if (!spots) return [];
  const views = viewsOf(model, spots, marksOf(model.cells, model));
  return boxes.flatMap(({ cells }, box) => {
    const given = marksOf(cells, model);
    const ways = views.filter((view) => fits(given, view.marks)).map(({ way }) => way);
    return [...new Set(ways)].map((way) => ({ box, way }));
  });
}
