// The pattern and the boxes of a task in English words: where every dot, cell and line is.
import { colourName, type Figure, figureName } from '../../figures/index.ts';
import { placesOf } from './places.ts';
import { readingOf } from './reading.ts';
import type { Cells, Content, Model, Printed } from './task.ts';

/** Such as "dot", "dots". */
export function nounsOf(content: Content): readonly [one: string, several: string] {
  switch (content) {
    case 'dots':
    case 'colours':
      return ['dot', 'dots'];
    case 'filled-cells':
      return ['filled cell', 'filled cells'];
    case 'lines':
      return ['line', 'lines'];
    case 'numerals':
      return ['number', 'numbers'];
    case 'signs':
      return ['sign', 'signs'];
    case 'shapes':
    case 'directions':
    case 'shapes-and-colours':
    case 'directions-and-colours':
      return ['shape', 'shapes'];
    default:
      return ['letter', 'letters'];
  }
}

/** Such as "1 line", "4 dots". */
export function counted(count: number, content: Content): string {
  const [one, several] = nounsOf(content);
  return `${count} ${count === 1 ? one : several}`;
}

/** How many of the places hold something. */
export function elementCount(cells: Cells): number {
  return cells.filter((figure) => figure !== null).length;
}

/** The whole task: the model place by place, then each box. */
export function describeTask(printed: Printed): string {
  const { content } = readingOf(printed);
  const { model, boxes } = printed;
  const { rows, columns } = model;
  const net =
    content === 'lines'
      ? `${rows} rows of ${columns} points, ${counted(elementCount(model.cells), content)}`
      : `${rows} rows of ${columns} cells`;
  const states = boxes.map(({ cells }, index) => {
    const isEmpty = elementCount(cells) === 0;
    return `Box ${index + 1} ${isEmpty ? 'is empty' : `has ${placesInWords(cells, model, content)}`}.`;
  });
  const shown = placesInWords(model.cells, model, content);
  return [`Model: ${net}: ${shown}.`, ...states].join(' ');
}

function placesInWords(cells: Cells, model: Model, content: Content): string {
  return content === 'lines' ? linesInWords(cells, model) : cellsInWords(cells, model, content);
}

function cellsInWords(cells: Cells, { rows, columns }: Model, content: Content): string {
  const lines = Array.from({ length: rows }, (_, row) => {
    const names = cells
      .slice(row * columns, (row + 1) * columns)
      .map((figure) => (figure ? elementName(figure, content) : 'empty'));
    return `row ${row + 1} ${names.join(', ')}`;
  });
  return lines.join('; ');
}

function elementName({ fill, ...figure }: Figure, content: Content): string {
  const { colour } = figure;
  switch (content) {
    case 'dots':
    case 'colours':
    case 'filled-cells': {
      const noun = content === 'filled-cells' ? 'cell' : 'dot';
      return colour === undefined ? noun : `${colourName(colour)} ${noun}`;
    }
    default:
      return figureName(fill === 'outline' ? figure : { ...figure, ...(fill ? { fill } : {}) });
  }
}

function linesInWords(cells: Cells, model: Model): string {
  const { columns } = model;
  const pointName = (point: number) =>
    `row ${Math.floor(point / columns) + 1} point ${(point % columns) + 1}`;
  return placesOf('lattice', model)
    .filter((_, place) => cells[place])
    .map(({ from, to }) => `from ${pointName(from)} to ${pointName(to)}`)
    .join('; ');
}
