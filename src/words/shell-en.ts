// English words of the command line.
import { LANGUAGES } from '../languages/index.ts';
import type { Use } from '../supplies/index.ts';
import { SAYS } from './say-refusal.ts';
import type { ShellWords } from './shell-words.ts';

function counted(count: number, one: string): string {
  return `${count} ${count === 1 ? one : `${one}s`}`;
}

/** Such as `14 of 40 red stickers of 12 mm`, or `A4 paper`; what is missing is said. */
function useText({ what, colour, diameterMm, paper = '', uses, has }: Use): string {
  const missing = uses > has ? ` (${what === 'sticker' ? `${uses - has} ` : ''}missing)` : '';
  if (what === 'sticker')
    return `${uses} of ${has} ${colour} stickers of ${diameterMm} mm${missing}`;
  if (what === 'crayon') return `a ${colour} crayon${missing}`;
  return `${SAYS.en(`thing.${what}`, { paper })}${missing}`;
}

/** To a tenth, below which nobody can tell. */
function percent(share: number): string {
  return `${Math.round(1000 * share) / 10} %`;
}

export const ENGLISH: ShellWords = {
  about:
    'Makes visual discrimination sheets for children of three to five: proven, ready to print.',
  commands: {
    pack: 'make a pack: sheets, answers and a page for the adult',
    check: 'prove every task of a pack file again from what is printed',
    again: 'make a sheet again from the code at its foot',
    ruler: 'make a page that shows whether a printer keeps true size',
    activities: 'list the activities with their parameters and steps',
    schema: 'print the JSON Schema of the pack file, of the recipe and of the stock',
  },
  options: {
    activity: 'kind of task, such as in-every-box',
    step: 'rung of the ladder, 1 upward (default: 1)',
    age: 'instead of a step: 3, 4 or 5; the first step that is a guess for it',
    difficulty:
      'instead of a step: how hard in logits, from about -3 to 3; values are chosen to meet it',
    tasks: "tasks a sheet (default: the step's own, as many as fit)",
    sheets: 'number of sheets (default: 1)',
    seed: 'whole number; the same seed makes the same pack (default: a new one)',
    paper: 'A4, Letter, A3 or A5 (default: A4)',
    orientation: 'portrait or landscape (default: portrait)',
    print: 'colour or grey (default: colour)',
    hand: 'right or left: no model stands under the hand that writes (default: right)',
    size: 'usual or large: large print, fewer tasks on a page (default: usual)',
    ink: 'full or saving: figures as outlines where the task allows (default: full)',
    margin: 'usual or pocket: wide enough for the frame of a wipe-clean pocket (default: usual)',
    colours: 'only these, with commas between: red,yellow,blue (default: all)',
    lettersOf:
      'a name: contents of letters are about its letters (with --set content=capitals or another)',
    ownLetters: "for a group: contents of letters are about the letters of each child's own name",
    set: 'a parameter of the activity, such as boxes=4; may be repeated',
    goals:
      "curricula whose goals the adult's page names, such as head-start,ncf-fs (default: none)",
    recipe: 'a recipe in JSON, to mix activities in one pack',
    stock: 'a count of stickers, crayons and tools in JSON; the pack is made with these alone',
    children:
      'a group: names with commas between; +1 or -2 behind a name gives that child steps above or below',
    sorted: 'how the sheets of a group lie: child or activity (default: child)',
    perChild: 'a folder for one PDF for each child of the group',
    language: `language of the printed words: ${LANGUAGES.join(', ')} (default: en)`,
    out: 'the PDF to write; - for standard output',
    json: 'the pack file to write',
    svg: 'a folder for one SVG a page',
    pieces: 'after each sheet, the missing figures as pieces to cut out and stick in',
    keyCard: 'after each sheet, its key or model as a card to cut out and lay beside it',
    cards: 'after each sheet, its tasks as cards to cut out',
    single: 'sheets of A5 on pages of their own (default: two on one A4, to cut apart)',
    measured:
      'what the 50 mm line measures on this printer, such as 48.5: pages are scaled to make up for it',
    noAnswers: 'leave the answer pages out',
    noAdultPage: "leave the adult's page out",
    byHand: 'without a printer: guides for making the sheets with stickers, pens and a ruler',
    halfMade: 'printed with empty circles in place of dots, for stickers to be put on',
    sticker: 'diameter in mm of the stickers at hand, with --by-hand or --half-made',
    quick: 'with --by-hand: one task on a page, in the layout that is quickest by hand',
    asJson: 'as JSON',
    uncertain: 'yes, write a sheet that was changed though it is not certain',
  },
  sheetsToCut: {
    cards: 'a sheet',
    'key-card': 'a sheet with a key or one model, such as by-key, copy-pattern or find-the-same',
    pieces:
      'a sheet with empty places for figures, such as one-of-each, continue-row or missing-part',
  },
  arguments: {
    file: 'the pack file; - for standard input',
    code: 'the code at the foot of a sheet, with or without hyphens',
    activity: 'one activity alone',
    schema: 'one schema alone: pack, recipe or stock',
  },
  examples: `
Examples:
  samewise pack --activity in-every-box --step 3 --sheets 10 --out pack.pdf
  samewise pack --activity by-key --age 4 --set entries=3 --paper Letter
  samewise pack --activity find-the-same --difficulty -2.2 --set content=pictures
  samewise pack --activity size-order --goals common-core,eyfs
  samewise pack --activity one-of-each --step 3 --pieces
  samewise pack --recipe recipe.json --out pack.pdf --json pack.json
  samewise pack --activity odd-one-out --step 4 --children "Wren, Moss+1, Fern" --out group.pdf
  samewise pack --activity in-every-box --by-hand --quick --out guide.pdf
  samewise check pack.json
  samewise ruler --out ruler.pdf
`,
  noLetters:
    'These sheets are not about letters, so the name changes nothing. Ask for letters: --set content=capitals',
  noPrinter: 'the house has no printer: --by-hand makes guides for making the sheets by hand',
  fromTheHouse: (uses) =>
    `from the house: ${uses.length === 0 ? 'nothing, the child points' : uses.map(useText).join(', ')}`,
  seedChosen: (seed) => `seed ${seed}; the same pack again with --seed ${seed}`,
  proving: (done, all) => `proving sheet ${done} of ${all}`,
  drawing: (done, all) => `drawing sheet ${done} of ${all}`,
  checking: (done, all) => `checking sheet ${done} of ${all}`,
  packMade: (sheets, tasks, doubts) =>
    `${counted(sheets, 'sheet')}, ${counted(tasks, 'task')}, ` +
    (doubts === 0 ? 'all proven' : `${doubts} changed and not certain`),
  inked: (share, ink, otherShare) => {
    const other = ink === 'full' ? 'with --ink saving' : 'in full';
    return `ink: about ${percent(share)} of the page on average, ${percent(otherShare)} ${other}`;
  },
  askSure: (tasks) =>
    `it was changed, and ${tasks.length === 1 ? 'task' : 'tasks'} ${tasks.join(', ')} ` +
    `${tasks.length === 1 ? 'has' : 'have'} not exactly one answer; to write it all the same add --uncertain`,
  aimed: (activity, step, settings, logits) => {
    const changes = settings.length === 0 ? '' : ` with ${settings.join(', ')}`;
    return `${activity}: step ${step}${changes}; ${logits} logits on the mean`;
  },
  written: (path) => `wrote ${path}`,
  allProven: (sheets, tasks, doubts) =>
    `${counted(tasks, 'task')} on ${counted(sheets, 'sheet')}: ` +
    (doubts === 0
      ? 'every answer is certain.'
      : `every answer is certain but for ${doubts} changed.`),
  someNotProven: (faults, tasks) => `${faults} of ${counted(tasks, 'task')} not certain.`,
  fault: (at, activity, code, reason, detail) =>
    `${at} (${activity}, ${code}) is ${reason}: ${detail}`,
  notes: {
    'code-unreadable': (at, code) => `note: ${at}: no sheet can be made from the code "${code}"`,
    'code-makes-other-tasks': (at, code) => `note: ${at}: the code ${code} makes other tasks`,
    'changed-and-not-certain': (at) => `note: ${at}: changed, and it has not exactly one answer`,
    'difficulty-differs': (at) => `note: ${at}: its difficulty is not what the file says`,
  },
  list: {
    contents: 'Contents',
    responses: 'Responses',
    parameters: 'Parameters',
    steps: 'Steps',
    above: 'as above',
  },
  range: (min, max) => `${min} to ${max}`,
  yesNo: 'yes or no',
  step: (age, tasks) => `age ${age}, ${counted(tasks, 'task')}`,
  defect: (reason) => `this is a fault in Samewise; nothing was written. ${reason}`,
};
