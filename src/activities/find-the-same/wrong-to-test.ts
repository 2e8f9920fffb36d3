// Tasks of find-the-same that break a rule on purpose.
import { hardlyOther, type Made, placesWhere, replaced, type WrongWays } from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 there is a second match': (task, random) =>
    withChoice(task, random.pick(wrongOnes(task)), task.printed.model),
  'R1 there is no match': (task, random) =>
    withChoice(task, task.answer, task.printed.choices[random.pick(wrongOnes(task))]),
  'R1 the key names another choice': (task, random) => ({
    ...task,
    answer: random.pick(wrongOnes(task)),
  }),
  'R1 the model is one of the wrong choices': (task, random) => {
    const model = task.printed.choices[random.pick(wrongOnes(task))];
    return model && { ...task, printed: { ...task.printed, model } };
  },
  'R2 a wrong choice is hardly another one than the model': (task, random) =>
    withChoice(task, random.pick(wrongOnes(task)), hardlyOther(task.printed.model)),
  'R1 the match is hardly the model': (task) =>
    withChoice(task, task.answer, hardlyOther(task.printed.model)),
};

function wrongOnes({ printed, answer }: Task): readonly number[] {
  return placesWhere(printed.choices, (_, place) => place !== answer);
}

function withChoice(
  task: Task,
  at: number,
  figure: Printed['model'] | undefined,
): Task | undefined {
  if (!figure) return undefined;
  const choices = replaced(task.printed.choices, at, figure);
  return { ...task, printed: { ...task.printed, choices } };
}
