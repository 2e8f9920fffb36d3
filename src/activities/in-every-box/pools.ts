// Which figures of a content may stand together in a task, and the drawing of some of them.
import type { Random } from '../../base/index.ts';
import {
  CAPITALS,
  DOT_LAYOUTS,
  drawForms,
  type Figure,
  type FormId,
  MOST_DOTS,
  mostForms,
  NUMERALS,
  SHAPES,
  SMALL_LETTERS,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { drawColours, FIGURE_COLOURS } from '../../palette/index.ts';
import type { Content } from './task.ts';

type FormContent = Exclude<Content, 'colours' | 'dot-quantities'>;

const FORMS: Readonly<Record<FormContent, readonly FormId[]>> = {
  shapes: SHAPES,
  capitals: CAPITALS,
  'small-letters': SMALL_LETTERS,
  numerals: NUMERALS,
};

/** How many different figures of the content can stand in one task, no two of them look-alikes. */
export function poolSize(content: Content): number {
  if (content === 'colours') return FIGURE_COLOURS.length;
  return content === 'dot-quantities' ? MOST_DOTS : mostForms(FORMS[content]);
}

/**
 * `count` (at most `poolSize`) different figures in random order, alike in all but what is looked at:
 * colours are all dots, forms all ink, quantities all lie the same way.
 */
export function drawFigures(
  content: Content,
  count: number,
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  if (content === 'colours') {
    return drawColours(random, count, style.print).map((colour) => ({ form: 'circle', colour }));
  }
  if (content === 'dot-quantities') return drawQuantities(count, random);
  return drawForms(random, FORMS[content], count).map((form) => ({ form }));
}

function drawQuantities(count: number, random: Random): readonly Figure[] {
  const layout = random.pick(DOT_LAYOUTS);
  const quantities = Array.from({ length: MOST_DOTS }, (_, index) => index + 1);
  return random.sample(quantities, count).map((dots) => ({ form: 'dots', count: dots, layout }));
}
