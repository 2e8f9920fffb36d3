// English messages of changing a sheet. {name} is a place of a task with what stands there; tasks and sheets are numbered from 1.

export const MESSAGES = {
  change: 'Change this page',
  done: 'Done changing',
  help: 'Choose a figure or a box on the page to change it. What you lock stays as it is when the rest of a task is drawn again.',
  tools: 'Changing this page',
  undo: 'Undo',
  redo: 'Redo',
  notKept:
    'This browser has no room to keep what can be undone: it lasts as long as this page is open. The changes themselves are kept in the address.',
  task: 'Task {task}',
  target: 'Task {task}, {name}',
  // Marks of a place, each after what is before.
  'target.locked': '{name}, locked',
  'target.lookHere': '{name}, look here',
  'state.certain': 'It has exactly one answer.',
  'state.changed': 'It has exactly one answer, but another one than before.',
  'state.uncertain': 'Its answer is not certain.',
  unchanged: 'As it was made.',
  repair: 'Repair',
  looking: 'Looking for a small repair …',
  noRepair: 'No small repair was found that keeps your last change. Undo takes it back.',
  redraw: 'Draw the rest again',
  lockedStay: '{locked} locked stay.',
  redrawTask: 'Task {task}: draw the rest again',
  repairTask: 'Repair task {task}: {sentence}',
  'harder.same': 'About as hard as it was made.',
  'harder.more':
    '{far, select, little {A little harder} much {Much harder} other {Harder}} than it was made.',
  'harder.less':
    '{far, select, little {A little easier} much {Much easier} other {Easier}} than it was made.',
  close: 'Close',
  lock: 'Lock',
  unlock: 'Unlock',
  lockAll: 'Lock all of it',
  unlockAll: 'Unlock all of it',
  swap: 'Swap with another',
  swapWith: 'Choose what to swap with: {name}.',
  stopSwap: 'Do not swap',
  leave: 'Leave its place empty',
  put: 'Put here',
  emptyInIt: 'Empty places in it',
  emptyPlaces: 'Places where nothing stands',
  asksFor: 'What the key asks for',
  offer: '{group}: {label}',
  loading: 'One moment …',
  // {list} is made of the next three by `doubt.next`.
  notSure: 'Changed, and not certain: {list}.',
  'doubt.next': '{before}; {next}',
  'doubt.several': 'sheet {sheet}, task {task} has more than one answer',
  'doubt.none': 'sheet {sheet}, task {task} has no answer',
  'doubt.unfit': 'sheet {sheet}, task {task} breaks a rule of its activity',
  openFile: 'Open a pack file',
  openHelp:
    'A file that “Save the pack file” made: it keeps changed sheets and own pictures, for another device as well.',
  // The name is that of `getPackFile`; {reason} are sentences.
  notPack:
    'That file could not be opened as a pack file. Choose one that “Save the pack file” made. {reason}',
  whichSheet: 'Which sheet of the file?',
  // {name} is the activity’s.
  'filed.asMade': 'Sheet {sheet}: {name}, step {step}',
  'filed.changed': 'Sheet {sheet}: {name}, step {step}, changed',
  // {filed} is one of these, {child} whose sheet it is.
  'filed.whose': '{filed} – {child}',
  tooLong:
    'This sheet is changed in so many places that its code is too long to print. Save the pack file: it opens this sheet again, and “Copy the code” gives the whole code, to record by.',
  printAnyway: 'Print it all the same; the adult’s page says so',
  'sure.none': 'Changed: no task of this sheet is certain.',
  'sure.some':
    '{sure, plural, one {Changed: {sure} of {tasks} tasks has exactly one answer.} other {Changed: {sure} of {tasks} tasks have exactly one answer.}}',
} as const;
