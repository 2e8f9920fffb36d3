// What each content puts into the places of a model, and how many different kinds of it one model can hold.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  type ContentId,
  type Figure,
  type FormId,
  formsOf,
  MOST_UNMIRRORED_DIRECTIONS,
  withoutVowels,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { coloursOf, drawColours, mostFairColours } from '../../palette/index.ts';
import { drawFigureSet, mostInSet } from '../figure-sets.ts';
import type { CopyValues } from './parameters.ts';
import { type Content, OWN_CONTENTS } from './task.ts';

/** Shapes whose outlines a child of five can draw; by the copying ages of the Gesell tradition and by eye. */
const DRAWN_SHAPES: readonly FormId[] = [
  'circle',
  'square',
  'triangle',
  'cross',
  'heart',
  'crescent',
  'half-circle',
  'diamond',
];
/** Kinds that a model can hold where two or more attributes or letters are looked at. */
const MOST_KINDS = 4;

function isOwn(content: Content): content is (typeof OWN_CONTENTS)[number] {
  return (OWN_CONTENTS as readonly string[]).includes(content);
}

/** How many kinds a model holds at most; `MOST_KINDS` and less. */
export function mostKinds(content: Content, style: PrintStyle): number {
  switch (content) {
    case 'dots':
    case 'lines':
      return 1;
    case 'filled-cells':
      return mostOf('colour', style);
    default:
      return Math.min(
        MOST_KINDS,
        mostInSet({ content, mostOf: (attribute) => mostOf(attribute, style) }),
      );
  }
}

function mostOf(attribute: Attribute, style: PrintStyle): number {
  if (attribute === 'turn') return MOST_UNMIRRORED_DIRECTIONS;
  return attribute === 'colour'
    ? Math.min(MOST_KINDS, mostFairColours('colour', coloursOf(style)))
    : MOST_KINDS;
}

/** What stands for each kind of a pattern of cells; lines have figures of their own. */
export function cellFigures(
  { content, kinds }: Pick<CopyValues, 'content' | 'kinds'>,
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  if (content === 'dots') return [{ form: 'circle' }];
  if (isOwn(content)) {
    const colours = drawColours(random, kinds, style.print, coloursOf(style));
    return colours.map((colour) => ({ form: 'square', colour }));
  }
  const source = {
    content,
    mostOf: (attribute: Attribute) => mostOf(attribute, style),
    forms: drawnForms(content, style.letters),
  };
  const figures = drawFigureSet(source, kinds, random, style);
  return isOutlined(content) ? figures.map((figure) => ({ ...figure, fill: 'outline' })) : figures;
}

function drawnForms(content: ContentId, letters: string | undefined): readonly FormId[] {
  const forms = withoutVowels(formsOf(content), letters);
  const isOfShapes = content.startsWith('shapes') || content.startsWith('directions');
  return isOfShapes ? forms.filter((form) => DRAWN_SHAPES.includes(form)) : forms;
}

/** Shapes of ink are printed as a pencil draws them: in outline. */
function isOutlined(content: ContentId): boolean {
  return content === 'shapes' || content === 'directions';
}
