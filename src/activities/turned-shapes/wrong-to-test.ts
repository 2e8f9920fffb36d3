// Tasks of turned-shapes that break a rule on purpose.
import { type Figure, formOf } from '../../figures/index.ts';
import { type Made, placesWhere, replaced, toggled, type WrongWays } from '../wrong-ways.ts';
import type { Answer, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key names one more or less': (task, random) => ({
    ...task,
    answer: toggledOnce(task, random.int(0, task.printed.choices.length - 1)),
  }),
  'R1 the key names other choices': (task) => ({ ...task, answer: wrongOnes(task) }),
  'R1 a wrong choice has the form of the model': (task, random) => {
    const at = random.pick(wrongOnes(task));
    const { model, choices } = task.printed;
    return withChoice(task, at, {
      ...choices[at],
      form: formOf(model),
      mirrored: choices[random.pick(task.answer)]?.mirrored,
    });
  },
  'R1 a right choice has another form': (task, random) => {
    const other = task.printed.choices[random.pick(wrongOnes(task))];
    return other && withChoice(task, random.pick(task.answer), other);
  },
  'R1 the model is another form': (task, random) => {
    const model = task.printed.choices[random.pick(wrongOnes(task))];
    return model && { ...task, printed: { ...task.printed, model } };
  },
  'R1 the child is told another number': ({ printed, answer }) => ({
    printed: { ...printed, matches: (printed.matches ?? 1) + 1 },
    answer,
  }),
  'R7 a letter stands there in the mirror and the child is not told': (task, random) => {
    const at = random.pick(wrongOnes(task));
    if (!/^(capital|small)-[FGJPRfghjr]$/.test(formOf(task.printed.model))) return undefined;
    const told = { ...task.printed, mirrors: undefined };
    return withChoice({ ...task, printed: told }, at, { ...task.printed.model, mirrored: true });
  },
};

function wrongOnes({ printed, answer }: Task): readonly number[] {
  return placesWhere(printed.choices, (_, place) => !answer.includes(place));
}

/** The key with a place put in or left out, but never an empty one. */
function toggledOnce({ answer }: Task, place: number): Answer {
  const changed = toggled(answer, place);
  return changed.length > 0 ? changed : [place === 0 ? 1 : 0];
}

function withChoice(task: Task, at: number, figure: Figure): Task {
  const choices = replaced(task.printed.choices, at, figure);
  return { ...task, printed: { ...task.printed, choices } };
}
