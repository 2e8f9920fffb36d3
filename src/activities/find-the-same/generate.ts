// Makes a task and its key: the model, one choice just like it, and wrong ones. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { attributesOf, figureAt } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { arrangeWrong } from './arrangement.ts';
import { limitsOfAttributes } from './attribute-limits.ts';
import { drawValues } from './generate-values.ts';
import type { Answer, Printed, SameValues } from './task.ts';

export function generate(
  values: SameValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { content, choices, nearMisses, mixed, mirrors, layout, response } = values;
  const attributes = attributesOf(content);
  const wanted = {
    most: limitsOfAttributes(values, style).map(({ most }) => most),
    wrong: choices - 1,
    nearMisses,
    mixed,
    first: mirrors === 'none' ? undefined : attributes.indexOf('turn'),
  };
  const looks = arrangeWrong(wanted, random);
  const counts = attributes.map((_, axis) => 1 + Math.max(...looks.map((look) => look[axis] ?? 0)));
  const space = drawValues(values, counts, random, style);
  const model = figureAt(
    space,
    attributes.map(() => 0),
  );
  const wrong = random.shuffle(looks.map((look) => figureAt(space, look)));
  const answer = random.int(0, wrong.length);
  const shown = [...wrong.slice(0, answer), model, ...wrong.slice(answer)];
  return {
    printed: { model, choices: shown, layout, response },
    answer,
  };
}
