// Tasks of shadows that break a rule on purpose.
import type { Figure } from '../../figures/index.ts';
import {
  anyOf,
  exchanged,
  type Made,
  placesWhere,
  replaced,
  type WrongWays,
} from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key names another shadow': (task, random) => {
    const model = random.int(0, task.answer.length - 1);
    const shadow = random.pick(
      placesWhere(task.printed.shadows, (_, place) => place !== task.answer[model]),
    );
    return { ...task, answer: replaced(task.answer, model, shadow) };
  },
  'R1 two shadows are exchanged': (task, random) => {
    const from = random.pick(task.answer);
    const to = random.pick(placesWhere(task.printed.shadows, (_, place) => place !== from));
    return withShadows(task, exchanged(task.printed.shadows, from, to));
  },
  'R1 a figure has no shadow': (task, random) => {
    const at = random.pick(task.answer);
    const other = random.pick(placesWhere(task.printed.shadows, (_, place) => place !== at));
    return withShadows(task, replaced(task.printed.shadows, at, task.printed.shadows[other] ?? {}));
  },
  'R1 a figure has two shadows': (task, random) => {
    const { shadows } = task.printed;
    const idle = anyOf(
      random,
      placesWhere(shadows, (_, place) => !task.answer.includes(place)),
    );
    const its = shadows[random.pick(task.answer)];
    return idle === undefined || !its ? undefined : withShadows(task, replaced(shadows, idle, its));
  },
  'R1 two figures have one shadow': (task) => {
    const [first, second, ...others] = task.printed.models;
    if (!first || !second) return undefined;
    return { ...task, printed: { ...task.printed, models: [first, first, ...others] } };
  },
  'R4 a shadow is in colour': (task, random) => {
    const at = random.int(0, task.printed.shadows.length - 1);
    const shadow = { ...task.printed.shadows[at], colour: 'red' as const };
    return withShadows(task, replaced(task.printed.shadows, at, shadow));
  },
  'R5 some shadows are as large as the figures and one is not': (task, random) => {
    const [{ size: modelSize = 1 } = {}] = task.printed.models;
    const at = random.int(0, task.printed.shadows.length - 1);
    const { size = 1, ...shadow } = task.printed.shadows[at] ?? {};
    const other = size === modelSize ? size * 0.6 : modelSize;
    return withShadows(task, replaced(task.printed.shadows, at, { ...shadow, size: other }));
  },
};

function withShadows(task: Task, shadows: readonly Figure[]): Task {
  return { ...task, printed: { ...task.printed, shadows } };
}
