// The figures of a key, and what may change from item to item without meaning anything.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  drawForms,
  type Figure,
  formOf,
  isShape,
  layoutOf,
  mostForms,
  SPREAD_LAYOUTS,
} from '../../figures/index.ts';
import { coloursOf, drawColours } from '../../palette/index.ts';
import { drawFigureSet, drawFromSpace } from '../figure-sets.ts';
import {
  IDLE_COLOURS,
  IDLE_SIZES,
  lookedAt,
  MOST_VARIANTS,
  mostOf,
  standOf,
  variantsOf,
} from './contents.ts';
import {
  type Brief,
  directions,
  drawLayouts,
  formsFor,
  POINTING,
  redrawFor,
  shapesFor,
} from './generate-parts.ts';

/** The figures of a key, in random order. */
export function drawKeyFigures(random: Random, brief: Brief): readonly Figure[] {
  return random.shuffle(drawLooks(random, brief)).map((look) => withFill(look, brief));
}

function drawLooks(random: Random, brief: Brief): readonly Figure[] {
  const { content, entries, leftRight } = brief.values;
  switch (content) {
    case 'dot-layouts':
      return drawLayouts(random, entries);
    case 'shapes-and-directions':
      return drawPointing(random, brief);
    default: {
      const source = {
        content,
        mostOf: (attribute: Attribute) => mostOf(attribute, leftRight, brief.style),
        forms: formsFor(brief),
        redraw: redrawFor(brief),
      };
      return drawFigureSet(source, entries, random, brief.style);
    }
  }
}

/** Two shapes, since few point, in as few directions as make the key. */
function drawPointing(random: Random, brief: Brief): readonly Figure[] {
  const { entries, leftRight } = brief.values;
  const forms = drawForms(random, formsFor(brief), 2).map((form) => ({ form }));
  const turns = directions(random, Math.ceil(entries / 2), leftRight);
  const axes = [
    { attribute: 'form', values: forms },
    { attribute: 'turn', values: turns },
  ] as const;
  return drawFromSpace({ base: {}, axes }, entries, random);
}

/** A shape that gets its response inside or round it is printed as an outline. */
function withFill(figure: Figure, { values }: Brief): Figure {
  const isOpen =
    isShape(formOf(figure)) &&
    figure.colour === undefined &&
    figure.fill === undefined &&
    standOf(values) !== 'below';
  return isOpen ? { ...figure, fill: 'outline' } : figure;
}

/**
 * The looks that an item may take on besides its entry's own; one empty look where nothing varies. None of them
 * is the look of the key, so that no item is more like the key than another.
 */
export function drawVariants(
  random: Random,
  brief: Brief,
  key: readonly Figure[],
): readonly Figure[] {
  const count = variantsOf(brief.values);
  switch (brief.values.vary) {
    case 'none':
      return [{}];
    case 'size':
      return IDLE_SIZES.map((size) => ({ size }));
    case 'colour': {
      const from = coloursOf(brief.style, IDLE_COLOURS);
      return drawColours(random, count, brief.style.print, from).map((colour) => ({ colour }));
    }
    case 'form':
      return otherForms(random, brief, key).slice(0, count);
    case 'layout':
      return otherLayouts(random, key).map((layout) => ({ layout }));
  }
}

/** Layouts that the key does not show, the dots as far apart in them as in the key. */
function otherLayouts(random: Random, key: readonly Figure[]) {
  const shown = key.map(layoutOf);
  return random.shuffle(SPREAD_LAYOUTS.filter((layout) => !shown.includes(layout)));
}

/** Forms that the key does not show: pointing ones where directions are looked at, else any shapes. */
function otherForms(random: Random, brief: Brief, key: readonly Figure[]): readonly Figure[] {
  const shown = key.map(formOf);
  const pool = lookedAt(brief.values.content).includes('turn') ? POINTING : shapesFor(brief);
  const others = pool.filter((form) => !shown.includes(form) && !brief.keptOut.includes(form));
  return drawForms(random, others, Math.min(MOST_VARIANTS, mostForms(others))).map((form) => ({
    form,
  }));
}
