// What makes a page unfit: a model with nothing to look at, colours too near, boxes that disagree or leave nothing to do.
import { fairlyDifferent, figureName, sameFigure } from '../../figures/index.ts';
import {
  COLOUR_NAMES,
  type ColourName,
  FAIR_DE00,
  worstDifferenceDe00,
} from '../../palette/index.ts';
import { contentSeen, holds, suitsResponse } from './solve-content.ts';
import { figureFaults, fits, type Mark, marksOf, type Spot, spotsOf } from './solve-reading.ts';
import { viewsOf } from './solve-views.ts';
import type { Model, Printed } from './task.ts';

/** The colour of the page. */
const PAPER: ColourName = 'white';

/** Faults of the model and of what is said about it. */
export function modelFaults(printed: Printed): readonly string[] {
  const { model } = printed;
  const spots = spotsOf(model);
  if (!spots) return [`the model has ${model.cells.length} cells, which is no grid and no lattice`];
  const marks = marksOf(model.cells, model);
  const unreadable = figureFaults(model.cells, spots, 'the model');
  if (unreadable.length > 0) return unreadable;
  return [
    ...contentFaults(printed),
    ...trivialFaults(marks, spots),
    ...colourFaults(marks),
    ...likenessFaults(model),
  ];
}

function contentFaults({ model, content, response }: Printed): readonly string[] {
  if (model.cells.every((cell) => cell === null)) return [];
  const seen = contentSeen(model);
  if (!seen) return ['the model holds figures of two kinds'];
  if (content !== undefined && !holds(model, content)) {
    return [`the model is said to hold ${content}, but holds ${seen}`];
  }
  const suits = response === undefined || suitsResponse(content ?? seen, response);
  return suits ? [] : [`the response ${response} does not suit ${content ?? seen}`];
}

/** A model that needs no looking: empty, or alike wherever something can stand. */
function trivialFaults(marks: readonly Mark[], spots: readonly Spot[]): readonly string[] {
  if (marks.every((mark) => mark === '')) return ['the model is empty'];
  const straight = marks.filter((_, index) => !isSlanted(spots[index]));
  const slanted = marks.filter((_, index) => isSlanted(spots[index]));
  const isAlike = new Set(straight).size === 1 && straight[0] !== '';
  const isWhole = slanted.every((mark) => mark === '') || slanted.every((mark) => mark !== '');
  return isAlike && isWhole ? ['the model is alike everywhere'] : [];
}

function isSlanted(spot: Spot | undefined): boolean {
  return spot?.slope === 'rising' || spot?.slope === 'falling';
}

function colourFaults(marks: readonly Mark[]): readonly string[] {
  const shown = COLOUR_NAMES.filter((name) => marks.some((mark) => mark.endsWith(` ${name}`)));
  const seen = [...shown, ...(shown.includes(PAPER) ? [] : [PAPER])];
  const onPaper = shown.includes(PAPER) ? ['white does not show on the page'] : [];
  const pairs = seen.flatMap((one, index) =>
    seen.slice(index + 1).map((other) => [one, other] as const),
  );
  return [
    ...onPaper,
    ...pairs
      .filter(([one, other]) => worstDifferenceDe00(one, other) < FAIR_DE00)
      .map(([one, other]) => `${one} and ${other} are too alike`),
  ];
}

/** Two figures of a grid that a child may take for one another, colours apart. */
function likenessFaults({ rows, columns, cells }: Model): readonly string[] {
  if (cells.length !== rows * columns) return [];
  const figures = cells.flatMap((figure) => figure ?? []);
  const kinds = figures.filter(
    (figure, index) => figures.findIndex((other) => sameFigure(other, figure)) === index,
  );
  return kinds.flatMap((one, index) =>
    kinds.slice(index + 1).flatMap((other) => {
      const isOneColour = one.colour === other.colour;
      const isFair = !isOneColour || fairlyDifferent(one, other);
      return isFair ? [] : [`${figureName(one)} and ${figureName(other)} are too alike`];
    }),
  );
}

/** Faults of one box. */
export function boxFaults({ model, boxes }: Printed, index: number): readonly string[] {
  const [where, cells] = [`box ${index + 1}`, boxes[index]?.cells ?? []];
  if (cells.length !== model.cells.length) {
    return [`${where} has ${cells.length} cells, the model has ${model.cells.length}`];
  }
  const spots = spotsOf(model) ?? [];
  const unreadable = figureFaults(cells, spots, where);
  if (unreadable.length > 0) return unreadable;
  const [given, wanted] = [marksOf(cells, model), marksOf(model.cells, model)];
  if (!fits(given, wanted)) {
    const view = viewsOf(model, spots, wanted).find(({ marks }) => fits(given, marks));
    return [disagreement(given, wanted, where, view?.way)];
  }
  if (given.every((mark, at) => mark === wanted[at])) return [`${where} leaves nothing to do`];
  const twin = boxes.findIndex(
    (other, at) => at < index && marksOf(other.cells, model).join() === given.join(),
  );
  const isStarted = given.some((mark) => mark !== '');
  return isStarted && twin >= 0 ? [`${where} is started just like box ${twin + 1}`] : [];
}

function disagreement(
  given: readonly Mark[],
  wanted: readonly Mark[],
  where: string,
  way: string | undefined,
): string {
  const place = given.findIndex((mark, at) => mark !== '' && mark !== wanted[at]) + 1;
  const asIf = way === undefined ? '' : `, as if the model were ${way}`;
  return `${where} disagrees with the model at place ${place}${asIf}`;
}
