// What makes a page unfit: a model with nothing to look at, colours too near, boxes that disagree or leave nothing to do.
import { type Told, told } from '../../base/index.ts';
import { fairlyDifferent, sameFigure } from '../../figures/index.ts';
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
export function modelFaults(printed: Printed): readonly Told[] {
  const { model } = printed;
  const spots = spotsOf(model);
  if (!spots) return [told('copy-pattern', 'fault.no-grid', { cells: model.cells.length })];
  const marks = marksOf(model.cells, model);
  const unreadable = figureFaults(model.cells, spots, 0);
  if (unreadable.length > 0) return unreadable;
  return [
    ...contentFaults(printed),
    ...trivialFaults(marks, spots),
    ...colourFaults(marks),
    ...likenessFaults(model),
  ];
}

function contentFaults({ model, content, response }: Printed): readonly Told[] {
  if (model.cells.every((cell) => cell === null)) return [];
  const seen = contentSeen(model);
  if (!seen) return [told('copy-pattern', 'fault.two-kinds')];
  if (content !== undefined && !holds(model, content)) {
    return [told('copy-pattern', 'fault.other-content')];
  }
  const suits = response === undefined || suitsResponse(content ?? seen, response);
  return suits ? [] : [told('copy-pattern', 'fault.response')];
}

/** A model that needs no looking: empty, or alike wherever something can stand. */
function trivialFaults(marks: readonly Mark[], spots: readonly Spot[]): readonly Told[] {
  if (marks.every((mark) => mark === '')) return [told('copy-pattern', 'fault.empty')];
  const straight = marks.filter((_, index) => !isSlanted(spots[index]));
  const slanted = marks.filter((_, index) => isSlanted(spots[index]));
  const isAlike = new Set(straight).size === 1 && straight[0] !== '';
  const isWhole = slanted.every((mark) => mark === '') || slanted.every((mark) => mark !== '');
  return isAlike && isWhole ? [told('copy-pattern', 'fault.everywhere')] : [];
}

function isSlanted(spot: Spot | undefined): boolean {
  return spot?.slope === 'rising' || spot?.slope === 'falling';
}

function colourFaults(marks: readonly Mark[]): readonly Told[] {
  const shown = COLOUR_NAMES.filter((name) => marks.some((mark) => mark.endsWith(` ${name}`)));
  const seen = [...shown, ...(shown.includes(PAPER) ? [] : [PAPER])];
  const onPaper = shown.includes(PAPER) ? [told('copy-pattern', 'fault.white')] : [];
  const pairs = seen.flatMap((one, index) =>
    seen.slice(index + 1).map((other) => [one, other] as const),
  );
  return [
    ...onPaper,
    ...pairs
      .filter(([one, other]) => worstDifferenceDe00(one, other) < FAIR_DE00)
      .map(([one, other]) =>
        told('copy-pattern', 'fault.colours-alike', {
          one: { colour: one },
          other: { colour: other },
        }),
      ),
  ];
}

/** Two figures of a grid that a child may take for one another, colours apart. */
function likenessFaults({ rows, columns, cells }: Model): readonly Told[] {
  if (cells.length !== rows * columns) return [];
  const figures = cells.flatMap((figure) => figure ?? []);
  const kinds = figures.filter(
    (figure, index) => figures.findIndex((other) => sameFigure(other, figure)) === index,
  );
  return kinds.flatMap((one, index) =>
    kinds.slice(index + 1).flatMap((other) => {
      const isOneColour = one.colour === other.colour;
      const isFair = !isOneColour || fairlyDifferent(one, other);
      return isFair
        ? []
        : [
            told('copy-pattern', 'fault.figures-alike', {
              one: { figure: one },
              other: { figure: other },
            }),
          ];
    }),
  );
}

/** Faults of one box. */
export function boxFaults({ model, boxes }: Printed, index: number): readonly Told[] {
  const [box, cells] = [index + 1, boxes[index]?.cells ?? []];
  if (cells.length !== model.cells.length) {
    return [
      told('copy-pattern', 'fault.cells', {
        box,
        cells: cells.length,
        wanted: model.cells.length,
      }),
    ];
  }
  const spots = spotsOf(model) ?? [];
  const unreadable = figureFaults(cells, spots, box);
  if (unreadable.length > 0) return unreadable;
  const [given, wanted] = [marksOf(cells, model), marksOf(model.cells, model)];
  if (!fits(given, wanted)) {
    const view = viewsOf(model, spots, wanted).find(({ marks }) => fits(given, marks));
    return [disagreement(given, wanted, box, view?.way)];
  }
  if (given.every((mark, at) => mark === wanted[at]))
    return [told('copy-pattern', 'fault.nothing-to-do', { box })];
  const twin = boxes.findIndex(
    (other, at) => at < index && marksOf(other.cells, model).join() === given.join(),
  );
  const isStarted = given.some((mark) => mark !== '');
  return isStarted && twin >= 0
    ? [told('copy-pattern', 'fault.twin', { box, twin: twin + 1 })]
    : [];
}

function disagreement(
  given: readonly Mark[],
  wanted: readonly Mark[],
  box: number,
  way: string = 'none',
): Told {
  const place = given.findIndex((mark, at) => mark !== '' && mark !== wanted[at]) + 1;
  return told('copy-pattern', 'fault.disagrees', { box, place, way });
}
