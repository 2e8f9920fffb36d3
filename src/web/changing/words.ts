// What the app says while a sheet is changed by changing.
import type { ShownDoubt } from '../making/protocol.ts';

const DOUBTS: Readonly<Record<ShownDoubt['reason'], string>> = {
  several: 'has more than one answer',
  none: 'has no answer',
  unfit: 'cannot be read one way',
};

const doubtOf = ({ sheet, task, reason }: ShownDoubt): string =>
  `sheet ${sheet}, task ${task} ${DOUBTS[reason]}`;

export const words = {
  change: 'Change this page',
  done: 'Done changing',
  help: 'Choose a figure on the page to change it.',
  tools: 'Changing this page',
  undo: 'Undo',
  redo: 'Redo',
  task: (number: number) => `Task ${number}`,
  target: (task: number, name: string) => `Task ${task}, ${name}`,
  locked: 'locked',
  lookHere: 'look here',
  state: {
    certain: 'It has exactly one answer.',
    changed: 'It has exactly one answer, but another one than before.',
    uncertain: 'It is not certain.',
  },
  unchanged: 'As it was made.',
  repair: 'Repair',
  looking: 'Looking for a small repair …',
  noRepair: 'No small repair was found that keeps your last change. Undo takes it back.',
  redraw: 'Draw the rest again',
  redrawHelp: (locked: number) =>
    locked === 0 ? 'Nothing is locked: the whole task is drawn again.' : `${locked} locked stay.`,
  redrawTask: (task: number) => `Task ${task}: draw the rest again`,
  repairTask: (task: number, sentence: string) => `Repair task ${task}: ${sentence}`,
  harder: (logits: number) => {
    const far = Math.abs(logits).toFixed(1);
    if (far === '0.0') return 'About as hard as it was made.';
    return `${far} logits ${logits > 0 ? 'harder' : 'easier'} than it was made.`;
  },
  close: 'Close',
  lock: 'Lock',
  unlock: 'Unlock',
  swap: 'Swap with another',
  swapWith: (name: string) => `Choose what to swap with: ${name}.`,
  stopSwap: 'Do not swap',
  leave: 'Leave its place empty',
  put: 'Put here',
  emptyPlaces: 'Places where nothing stands',
  emptyPlace: (task: number, name: string) => `Task ${task}, ${name}`,
  asksFor: 'What the key asks for',
  loading: 'One moment …',
  notSure: (doubts: readonly ShownDoubt[]) =>
    `Changed by changing, and not certain: ${doubts.map(doubtOf).join('; ')}.`,
  printAnyway: 'Print it all the same; the adult’s page says so',
  sure: (tasks: number, unsure: number) =>
    unsure === tasks
      ? 'Changed by changing: no task of this sheet is certain.'
      : `Changed by changing: ${tasks - unsure} of ${tasks} tasks have exactly one answer.`,
} as const;
