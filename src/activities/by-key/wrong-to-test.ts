// Tasks of by-key that break a rule on purpose.
import {
  exchanged,
  hardlyOther,
  type Made,
  placesWhere,
  replaced,
  twoThatDiffer,
  type WrongWays,
  without,
} from '../wrong-ways.ts';
import type { Answer, Entry, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key names another entry for one item': (task, random) => {
    const item = random.int(0, task.answer.length - 1);
    const entry = random.pick(placesWhere(task.printed.key, (_, at) => at !== task.answer[item]));
    return { ...task, answer: replaced(task.answer, item, entry) };
  },
  'R1 two items are exchanged': (task, random) => {
    const two = twoThatDiffer(random, task.answer, (one, other) => one !== other);
    if (!two) return undefined;
    return { ...task, printed: { ...task.printed, items: exchanged(task.printed.items, ...two) } };
  },
  'R1 an entry is missing from the key': (task, random) =>
    withKey(task, without(task.printed.key, random.pick(task.answer))),
  'R1 the key exchanges two entries': (task) => ({
    ...task,
    answer: task.answer.map((entry) => (entry < 2 ? 1 - entry : entry)),
  }),
  'R2 two entries have one figure': (task, random) => {
    const [one, other] = random.sample([...task.printed.key.keys()], 2);
    return withEntry(task, one, (entry) => ({
      ...entry,
      figure: task.printed.key[other ?? 0]?.figure ?? entry.figure,
    }));
  },
  'R2 the figure of one entry is hardly another one than that of the next': (task) =>
    withEntry(task, 0, (entry) => ({
      ...entry,
      figure: hardlyOther(task.printed.key[1]?.figure ?? entry.figure),
    })),
  'R3 two entries have one response': (task, random) => {
    const [one, other] = random.sample([...task.printed.key.keys()], 2);
    return withEntry(task, one, (entry) => ({
      ...entry,
      response: task.printed.key[other ?? 0]?.response ?? entry.response,
    }));
  },
  'R3 the response of one entry is of another kind': (task) =>
    withEntry(task, 0, (entry) => ({
      ...entry,
      response:
        entry.response.kind === 'ring'
          ? { kind: 'sign', sign: 'sign-plus' }
          : { kind: 'ring', colour: 'red' },
    })),
  'R4 nothing is asked of one entry': (task, random) => {
    const [entry, other] = random.sample([...task.printed.key.keys()], 2);
    return inOrder(
      task,
      task.answer.map((each) => (each === entry ? (other ?? each) : each)),
    );
  },
  'R5 one entry comes three times running': (task, random) => {
    if (task.answer.length < 3) return undefined;
    const from = random.int(0, task.answer.length - 3);
    const entry = task.answer[from] ?? 0;
    return inOrder(
      task,
      task.answer.map((each, item) => (item >= from && item < from + 3 ? entry : each)),
    );
  },
  'R6 the items follow the order of the key': (task) => {
    const entries = task.printed.key.length;
    return task.answer.length < 2 * entries
      ? undefined
      : inOrder(
          task,
          task.answer.map((_, item) => item % entries),
        );
  },
};

function withKey(task: Task, key: readonly Entry[]): Task {
  return { ...task, printed: { ...task.printed, key } };
}

function withEntry(task: Task, at = 0, change: (entry: Entry) => Entry): Task | undefined {
  const entry = task.printed.key[at];
  return entry && withKey(task, replaced(task.printed.key, at, change(entry)));
}

/** The page with other items, each one of those that stood there for its entry, and the key for them. */
function inOrder(task: Task, answer: Answer): Task | undefined {
  const itemOf = (entry: number) => task.printed.items[task.answer.indexOf(entry)];
  const items = answer.flatMap((entry) => itemOf(entry) ?? []);
  if (items.length < answer.length || answer.join() === task.answer.join()) return undefined;
  return { printed: { ...task.printed, items }, answer };
}
