// The pattern and the boxes of a task in words: where every dot, cell and line is.
import { type Figure, formsOf, isNumeral } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { isMirrored } from '../../page/index.ts';
import type { Wording } from '../in-words.ts';
import type { MESSAGES } from './messages-en.ts';
import { placesOf } from './places.ts';
import { readingOf } from './reading.ts';
import type { Cells, Content, Model, Printed } from './task.ts';

type SayCopy = Say<typeof MESSAGES>;

/** What a model of the content is made of. */
export function nounOf(content: Content) {
  switch (content) {
    case 'dots':
    case 'colours':
      return 'dot';
    case 'filled-cells':
      return 'cell';
    case 'lines':
      return 'line';
    case 'signs':
      return 'sign';
    case 'shapes':
    case 'directions':
    case 'shapes-and-colours':
    case 'directions-and-colours':
      return 'shape';
    default:
      return formsOf(content).every(isNumeral) ? 'numeral' : 'letter';
  }
}

/** How many of the places hold something. */
export function elementCount(cells: Cells): number {
  return cells.filter((figure) => figure !== null).length;
}

/** The whole task: the model place by place, then each box. */
export function describeTask(say: SayCopy, wording: Wording, printed: Printed): string {
  const { content } = readingOf(printed);
  const { model, boxes } = printed;
  const placesIn = (cells: Cells) =>
    content === 'lines'
      ? linesInWords(say, wording, cells, model)
      : cellsInWords(say, wording, cells, model, content);
  const states = boxes.map(({ cells }, index) => {
    const place = index + 1;
    return elementCount(cells) === 0
      ? say('describe.box.empty', { place })
      : say('describe.box', { place, places: placesIn(cells) });
  });
  const { rows, columns, cells } = model;
  const shown = say(content === 'lines' ? 'describe.lines' : 'describe.cells', {
    rows,
    columns,
    count: elementCount(cells),
    places: placesIn(cells),
  });
  return [shown, ...states].join(' ');
}

function cellsInWords(
  say: SayCopy,
  wording: Wording,
  cells: Cells,
  { rows, columns }: Model,
  content: Content,
): string {
  const lines = Array.from({ length: rows }, (_, row) => {
    const names = cells
      .slice(row * columns, (row + 1) * columns)
      .map((figure) =>
        figure ? elementName(say, wording, figure, content) : say('describe.empty'),
      );
    return say('describe.row', { place: row + 1, names: wording.inRow(names) });
  });
  return wording.inParts(lines);
}

function elementName(say: SayCopy, wording: Wording, figure: Figure, content: Content): string {
  const { fill, ...rest } = figure;
  const noun = nounOf(content);
  if (noun !== 'dot' && noun !== 'cell') {
    return wording.figure(fill === undefined || fill === 'outline' ? rest : figure);
  }
  const { colour } = figure;
  return colour === undefined
    ? say(`element.${noun}`)
    : say(`element.${noun}.coloured`, { key: colour, colour: wording.colour(colour) });
}

/** Points are counted as a row is read; the lines themselves lie the same on every page. */
function linesInWords(say: SayCopy, wording: Wording, cells: Cells, model: Model): string {
  const { columns } = model;
  const rowOf = (point: number) => Math.floor(point / columns) + 1;
  const pointOf = (point: number) =>
    isMirrored(wording.language) ? columns - (point % columns) : (point % columns) + 1;
  const lines = placesOf('lattice', model)
    .filter((_, place) => cells[place])
    .map(({ from, to }) =>
      say('describe.line', {
        fromRow: rowOf(from),
        fromPoint: pointOf(from),
        toRow: rowOf(to),
        toPoint: pointOf(to),
      }),
    );
  return wording.inParts(lines);
}
