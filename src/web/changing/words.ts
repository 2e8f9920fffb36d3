// What the app says while a sheet is changed.
import type { FiledSheetShown, ShownDoubt } from '../making/protocol.ts';
import { spoken } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';

/** Differences below the first, in logits, are not told; below the second they are little, from the third on much (our own choice). */
const [LEAST_TOLD, CLEAR, MUCH] = [0.05, 0.35, 1] as const;

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
    const distance = Math.abs(logits);
    if (distance < LEAST_TOLD) return say('harder.same');
    const far = distance < CLEAR ? 'little' : distance < MUCH ? 'clear' : 'much';
    return say(logits > 0 ? 'harder.more' : 'harder.less', { far });
  },
  notPack: (reason: string) => say('notPack', { reason }).trim(),
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
