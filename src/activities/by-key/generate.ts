// Makes a by-key task: responses first, then figures unlike them, then the items and their order.
import type { Random } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { columnsOf, standOf } from './contents.ts';
import { drawKeyFigures, drawVariants } from './generate-figures.ts';
import { dealVariants, drawCounts, drawOrder } from './generate-order.ts';
import type { Brief } from './generate-parts.ts';
import { drawResponses } from './generate-responses.ts';
import type { Parameters } from './parameters.ts';
import type { Answer, Entry, Printed } from './task.ts';

/** A task of these values; never fails for values without refusals. */
export function generate(
  values: Parameters,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { responses, keptOut } = drawResponses(random, values, style);
  const brief: Brief = { values, style, keptOut };
  const figures = drawKeyFigures(random, brief);
  const key = responses.map(
    (response, place): Entry => ({ figure: figures[place] ?? {}, response }),
  );
  const columns = columnsOf(values.items, standOf(values));
  const answer = drawOrder(random, drawCounts(random, values), columns);
  const variants = drawVariants(random, brief, figures);
  const dealt = dealVariants(random, answer, variants.length);
  const items = answer.map((entry, item) => ({
    ...figures[entry],
    ...variants[dealt[item] ?? 0],
  }));
  const sticker = values.response === 'sticker' ? { stickerMm: values.stickerMm } : {};
  return { printed: { key, items, columns, ...sticker }, answer };
}
