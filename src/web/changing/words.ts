// What the app says while a sheet is changed.
import type { FiledSheetShown, ShownDoubt } from '../making/protocol.ts';
import { spoken } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';

/** Differences below this, in logits, are not told. */
const LEAST_TOLD = 0.05;

export const words = spoken('app/changing', MESSAGES, ({ say, plain, under }) => ({
  ...plain,
  state: under('state'),
  task: (task: number) => say('task', { task }),
  target: (task: number, place: string, marks: readonly ('locked' | 'lookHere')[] = []) =>
    marks.reduce(
      (name, mark) => say(`target.${mark}`, { name }),
      say('target', { task, name: place }),
    ),
  lockedStay: (locked: number) => say('lockedStay', { locked }),
  redrawTask: (task: number) => say('redrawTask', { task }),
  repairTask: (task: number, sentence: string) => say('repairTask', { task, sentence }),
  harder: (logits: number) => {
    if (Math.abs(logits) < LEAST_TOLD) return say('harder.same');
    const far = Math.abs(logits).toFixed(1);
    return say(logits > 0 ? 'harder.more' : 'harder.less', { far });
  },
  swapWith: (name: string) => say('swapWith', { name }),
  offer: (group: string, label: string) => say('offer', { group, label }),
  filed: (number: number, { name, step, isChanged, child }: FiledSheetShown) => {
    const which = isChanged ? 'filed.changed' : 'filed.asMade';
    const filed = say(which, { sheet: number, name, step });
    return child === undefined ? filed : say('filed.whose', { filed, child });
  },
  notSure: (doubts: readonly ShownDoubt[]) => {
    const told = doubts.map(({ sheet, task, reason }) => say(`doubt.${reason}`, { sheet, task }));
    const list = told.reduce((before, next) => say('doubt.next', { before, next }));
    return say('notSure', { list });
  },
  sure: (tasks: number, unsure: number) =>
    unsure === tasks ? say('sure.none') : say('sure.some', { sure: tasks - unsure, tasks }),
}));
