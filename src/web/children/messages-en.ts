// English messages of what all screens about children say.

export const MESSAGES = {
  child: 'Child',
  noChild: 'No child yet. A nickname is enough to begin.',
  addInRecord: 'Add a child in Record',
  tryDemo: 'Try with a demo group',
  demoAbout:
    'Four invented children with their records, to see how it all works. They never mix with your own, and can be removed at any time.',
  makingDemo: 'Making the demo group …',
  demo: 'Invented children',
  demoFacts:
    'These children are invented, for trying out. Nothing of them mixes with your own records.',
  backToOwn: 'Back to my own',
  backAtOwn: 'Back at your own children.',
  removeDemo: 'Remove the demo group',
  removeQuestion: 'Delete the demo group for good?',
  removeFacts:
    'The invented children go, with all that you tried with them. Your own records stay as they are.',
  demoRemoved: 'The demo group is removed. Back at your own children.',
  deleteForGood: 'Delete for good',
  keep: 'Keep',
  undo: 'Undo',
  bringBack: 'Bring it back',
  takenBack: 'Taken back.',
  broughtBack: 'It is back.',
  loading: 'Opening the records …',
} as const;
