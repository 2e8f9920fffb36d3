// Tells what a model is made of from its figures alone, and which responses go with it.
import {
  attributesOf,
  type ContentId,
  type Figure,
  formOf,
  formsOf,
  stanceOf,
} from '../../figures/index.ts';
import {
  CONTENTS,
  type Content,
  type CopyResponse,
  type Model,
  type OWN_CONTENTS,
} from './task.ts';

/** The contents that have a response of their own; all others are drawn. */
const SUITING: Readonly<Record<Exclude<CopyResponse, 'draw'>, readonly Content[]>> = {
  sticker: ['colours'],
  'colour-in': ['dots', 'colours', 'filled-cells'],
  'draw-line': ['lines'],
};
const NOT_DRAWN: readonly Content[] = ['colours', 'filled-cells', 'lines'];

/** Plainest first: what black dots and filled squares are taken for where a page does not say. */
const BY_PLAINNESS: readonly Content[] = [...new Set(['dots', 'colours', ...CONTENTS] as const)];

export function suitsResponse(content: Content, response: CopyResponse): boolean {
  return response === 'draw' ? !NOT_DRAWN.includes(content) : SUITING[response].includes(content);
}

/** The content as seen; undefined: no figures, or figures of no one content. */
export function contentSeen(model: Model): Content | undefined {
  const isEmpty = model.cells.every((cell) => cell === null);
  return isEmpty ? undefined : BY_PLAINNESS.find((content) => holds(model, content));
}

/** Whether all that a model shows is of the content. */
export function holds({ rows, columns, cells }: Model, content: Content): boolean {
  const isGrid = cells.length === rows * columns;
  if (!isGrid) return content === 'lines';
  return cells.every((figure) => figure === null || isOf(figure, content));
}

function isOf(figure: Figure, content: Content): boolean {
  const form = formOf(figure);
  const isOfInk = figure.colour === undefined || figure.colour === 'black';
  switch (content) {
    case 'lines':
      return false;
    case 'dots':
      return form === 'circle' && isOfInk && isSolid(figure);
    case 'colours':
      return form === 'circle' && isSolid(figure);
    case 'filled-cells':
      return form === 'square' && figure.colour !== undefined;
    default:
      return isOfContent(figure, content);
  }
}

function isOfContent(figure: Figure, content: Exclude<Content, (typeof OWN_CONTENTS)[number]>) {
  const attributes = attributesOf(content);
  const isTurned = stanceOf(figure).turn !== 0;
  return (
    isFormOf(figure, content) &&
    (attributes.includes('turn') || !isTurned) &&
    attributes.includes('colour') === (figure.colour !== undefined)
  );
}

function isFormOf(figure: Figure, content: ContentId): boolean {
  return formsOf(content).includes(formOf(figure));
}

function isSolid({ fill = 'solid' }: Figure): boolean {
  return fill === 'solid';
}
