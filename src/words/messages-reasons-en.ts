// English messages of what refusals say of their own, where no single activity says it: why, in brackets behind what was
// expected; what was expected, behind `expected` and before `got`; how much, with the most there may be in {count}; and
// what to do, a sentence of its own.

export const MESSAGES = {
  // Why, said alike of several activities. {content} is such as `colours`; a language may choose by its id, {contentId}.
  'sticker-colour': 'a dot sticker can match nothing but a colour',
  'no-more': 'no more can be told apart fairly',
  outline: 'an outline to colour in would give away what is missing',
  'only-colour': 'only the colour is asked for, and that is coloured in',
  pictures: 'no child can draw these pictures apart',
  mirrors: 'only directions have mirror images that can be told apart at all',
  row: 'a row of more than {most} has no room on a page',
  content: '{content} leave no more that can be told apart fairly',
  'content.here': '{content} cannot be asked for here',
  // Of the colours at hand {fair} can be told apart.
  'colours.few':
    'only {count, plural, one {{count} colour is} other {{count} colours are}} at hand',
  'colours.none':
    'only {count, plural, one {{count} colour is} other {{count} colours are}} at hand, and none that shows on paper',
  'colours.fair':
    'only {count, plural, one {{count} colour is} other {{count} colours are}} at hand, of which no more than {fair} can be told apart',
  'colours.fair.grey':
    'only {count, plural, one {{count} colour is} other {{count} colours are}} at hand, of which no more than {fair} can be told apart in grey print',
  'difficulty.range': 'content and response as they are, no other difficulty can be reached',
  'difficulty.nearest': 'these are the nearest difficulties that can be had',
  'code.newer': 'the code was made by a Samewise that knows more of them',
  'sticker-size':
    'no larger stickers are sold. Choose smaller stickers, or another thing for the child to do',
  // What was expected.
  'expected.whole': 'a whole number from {min} to {max}',
  'expected.whole.any': 'a whole number',
  'expected.number': 'a number',
  'expected.yes-no': 'true or false',
  'expected.text': 'text',
  'expected.object': 'an object',
  'expected.list': 'a list',
  'expected.value': 'a value',
  'expected.choices': 'one of {choices}',
  // {of}: `array`, `string`, or what is neither.
  'expected.least':
    'at least {of, select, array {{count} entries} string {{count} characters} other {{count}}}',
  'expected.most':
    'at most {of, select, array {{count} entries} string {{count} characters} other {{count}}}',
  'expected.more':
    'more than {of, select, array {{count} entries} string {{count} characters} other {{count}}}',
  'expected.less':
    'less than {of, select, array {{count} entries} string {{count} characters} other {{count}}}',
  // {fault} is in the words of the browser.
  'expected.json': 'JSON',
  'expected.json.fault': 'JSON ({fault})',
  'expected.colour': 'at least one colour',
  'expected.names': 'names with commas between',
  'expected.code': 'the code printed at the foot of a sheet',
  'expected.code.activity':
    'the number of an activity that this Samewise has (a newer one may have more)',
  'expected.code.printed': 'a code that was printed on a sheet',
  'expected.codes': 'at least one',
  'expected.character':
    'one of {alphabet} (look-alikes such as 0 O 1 I L 5 S 8 B Z are never printed)',
  'expected.step': 'a step or a difficulty',
  'expected.mm': 'a whole number of millimetres',
  'expected.measure': 'what the 50 mm line measures in mm, such as 48.5',
  'expected.printed': 'printed sheets, since what is cut out comes from the printer',
  'expected.child': 'a child of the records',
  'expected.suiting': 'another sheet that suits this child',
  'expected.language': 'a language',
  'expected.stock': 'a count of what is in the house',
  'expected.group': 'a group to show',
  'expected.id': 'an id',
  'expected.code.sheet': 'a sheet code as it is printed',
  'expected.nickname': 'a nickname',
  'expected.month': 'a month such as 2022-05',
  'expected.language.tag': 'a language such as en',
  'expected.day': 'a day such as 2026-03-09',
  'expected.curve': 'a curve of 4, 7, 10 … points',
  // What a picture of a family's own must be; {most} is a count, {end} half the side of its cell in its own units.
  'expected.picture.number': 'a picture whose number no other picture has',
  'expected.picture.outline': 'an outline round all parts, and more than a speck',
  'expected.picture.length': 'at most {most} characters of outline and parts together',
  'expected.picture.name': 'a name of 1 to {most} characters, or none',
  'expected.picture.parts': '1 to {most} parts',
  'expected.picture.colour': 'a colour such as #33aa55',
  'expected.picture.path': 'closed paths of M, L, Q, C and Z with whole numbers',
  'expected.picture.inside': 'coordinates from -{end} to {end}',
  'expected.pictures.order': '1 to {most} pictures in order',
  // Why a change of a sheet cannot be made.
  'change.no-task': 'the sheet has no such task',
  'change.no-place': 'the task has no such place',
  'change.no-fact': 'the task tells nothing there',
  'change.unprintable': 'this kind of sheet cannot print it',
  'change.undrawable': 'it leaves no task that can be drawn',
  'change.no-offer': 'nothing of that kind can be added or taken away there',
  'change.most': 'at most {most} things can be added or taken away',
  'change.unlike': 'the two are not of one form',
  'change.locked.repair': 'no repair leaves what is locked as it is',
  'change.locked.redraw': 'what is locked leaves no room for a task that is certain',
  // How much.
  'amount.characters': '{count} characters',
  'amount.characters.name': '{count} characters of a name',
  'amount.bytes': '{count} bytes',
  'amount.levels': '{count} levels of nesting',
  'amount.children': '{count} children',
  'amount.sheets': '{count} sheets',
  // {lies} is how the paper lies. No tasks: behind `there is room for`.
  'amount.tasks':
    '{count, plural, =0 {no tasks} one {{count} task} other {{count} tasks}} on {paper} {lies, select, portrait {portrait} other {landscape}}',
  'amount.tasks.different':
    '{count, plural, =0 {no different tasks with these values} one {{count} different task with these values} other {{count} different tasks with these values}}',
  'amount.sheets.different':
    '{count, plural, =0 {no different sheets with these values} one {{count} different sheet with these values} other {{count} different sheets with these values}}',
  'amount.sheets.equal':
    '{count, plural, =0 {no different sheets of equal difficulty with these values} one {{count} different sheet of equal difficulty with these values} other {{count} different sheets of equal difficulty with these values}}',
  'amount.changes':
    '{count, plural, =0 {no changes} one {{count} change} other {{count} changes}} in the code at the foot of the sheet',
  'amount.sticker': '{count} mm across: the largest stickers that find room on this sheet',
  // What to do.
  'do.fewer': 'Ask for {count} or fewer.',
  'do.one': 'Ask for one.',
  'do.easier': 'Choose an easier step.',
  // Another page has room for {room}.
  'do.fewer.page':
    'Ask for {count} or fewer, or ask for {paper} {lies, select, portrait {portrait} other {landscape}}, which has room for {room}.',
  'do.one.page':
    'Ask for one, or ask for {paper} {lies, select, portrait {portrait} other {landscape}}, which has room for {room}.',
  'do.easier.page':
    'Choose an easier step, or ask for {paper} {lies, select, portrait {portrait} other {landscape}}, which has room for {room}.',
  'do.other-sheets': 'Ask for fewer sheets, another step or another content.',
  'do.take-back': 'Take some back, or draw a whole task again, which takes the room of one.',
  'do.smaller-stickers': 'Take smaller stickers, or fewer tasks or figures.',
} as const;
