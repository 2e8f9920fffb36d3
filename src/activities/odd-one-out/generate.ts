// Makes a task: figures of which exactly one stands alone, by one attribute of the content.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  attributesOf,
  type ContentId,
  type Figure,
  formsOf,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { drawOrder, type Member } from './generate-order.ts';
import { drawKinds } from './generate-pictures.ts';
import { drawShifts } from './generate-shifts.ts';
import { drawIdle, drawPair, type Look, type Ways } from './generate-values.ts';
import type { Answer, Parameters, Printed } from './task.ts';
import { idleAttributes, mostGroups, plainContent } from './varying.ts';

/** The figures that are alike but for what says nothing, and the odd one. */
interface Cast {
  readonly others: readonly Member[];
  readonly odd: Member;
}

/** Never fails for values that `limits` does not refuse. */
export function generate(
  values: Parameters,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const content = plainContent(values.content);
  const { others, odd } = content
    ? drawCast(content, values, style, random)
    : drawKinds(values, random);
  const { figures, place } = drawOrder(others, odd, random);
  return {
    printed: {
      figures,
      ...layoutOf(values, random),
      response: values.response,
      ...(values.response === 'sticker' ? stickerOf(figures, style) : {}),
    },
    answer: { odd: place },
  };
}

/** Where there are few colours, one that no figure has; ink is black. */
function stickerOf(figures: readonly Figure[], { colours = [] }: PrintStyle): Partial<Printed> {
  const free = colours.find((name) => figures.every(({ colour = 'black' }) => colour !== name));
  return free === undefined ? {} : { stickerColour: free };
}

function layoutOf({ figures, layout }: Parameters, random: Random): Partial<Printed> {
  if (layout === 'row') return {};
  const columns = Math.ceil(figures / 2);
  return layout === 'grid'
    ? { columns }
    : { columns, shifts: drawShifts(figures, columns, random) };
}

function drawCast(content: ContentId, values: Parameters, style: PrintStyle, random: Random): Cast {
  const told = values.odd === 'any' ? random.pick(attributesOf(content)) : values.odd;
  const base = drawBase(content, random);
  const ways: Ways = { ...values, content, style, form: base.form };
  const [common, odd] = drawPair(told, ways, random);
  const groups = values.vary ? drawGroups(content, told, ways, values.figures - 1, random) : [];
  const kept = values.vary ? {} : drawKept(content, told, ways, random);
  const looks = groups.length > 0 ? groups : Array.from({ length: values.figures - 1 }, () => kept);
  const memberOf = (look: Look, toldLook: Look): Member => ({
    figure: { ...base, ...look, ...toldLook },
    idle: Object.values(look).map(String),
  });
  return {
    others: looks.map((look) => memberOf(look, common)),
    odd: memberOf(random.pick(looks), odd),
  };
}

/** What all figures share: a form where the form is not looked at, and one way for dots to lie. */
function drawBase(content: ContentId, random: Random): Figure {
  if (attributesOf(content).includes('form')) return {};
  const form = random.pick(formsOf(content));
  return form === 'dots' ? { form, layout: 'dice' } : { form };
}

/** Attributes of the content that neither tell nor change, at one look for all figures. */
function drawKept(content: ContentId, told: Attribute, ways: Ways, random: Random): Look {
  const kept = attributesOf(content).filter((attribute) => attribute !== told);
  const looks = kept.map((attribute): Look => {
    // Sizes are kept at the full one, so that figures are as large as they can be.
    return attribute === 'size' ? { size: 1 } : (drawIdle(attribute, 1, ways, random)[0] ?? {});
  });
  return Object.assign({}, ...looks);
}

/** A look for each of `count` figures, each look held by two or more. */
function drawGroups(
  content: ContentId,
  told: Attribute,
  ways: Ways,
  count: number,
  random: Random,
): readonly Look[] {
  const groups = random.int(2, mostGroups(count));
  const idle = idleAttributes(content, told).map((attribute) =>
    drawIdle(attribute, groups, ways, random),
  );
  const looks = Array.from(
    { length: groups },
    (_, group): Look => Object.assign({}, ...idle.map((values) => values[group])),
  );
  const pairs = looks.flatMap((look) => [look, look]);
  const rest = Array.from({ length: count - pairs.length }, () => random.pick(looks));
  return [...pairs, ...rest];
}
