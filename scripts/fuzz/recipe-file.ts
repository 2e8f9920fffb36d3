// Recipe files: read, and the first sheet of each part made; of a group, the names of its files.
import { ACTIVITY_IDS } from '../../src/activities/index.ts';
import {
  childFileName,
  makePartSheet,
  type Recipe,
  readRecipeText,
  readStockText,
} from '../../src/sheets/index.ts';
import { OWN_PICTURES } from './bases.ts';
import { changedTexts } from './changed-json.ts';
import type { Kind } from './kind.ts';
import { acceptedOrTold, isOneFileName } from './must-hold.ts';

const STOCK = {
  stickers: [{ colour: 'red', diameterMm: 13, count: 40 }],
  crayons: ['red', 'blue'],
  tools: ['pencil', 'scissors'],
  printer: 'grey',
};

const PLAIN = ACTIVITY_IDS.map((activity, index) => ({
  format: 'samewise.recipe',
  version: 1,
  seed: index,
  parts: [{ activity, step: 1 + (index % 3), sheets: 2 }],
}));
const FULL = {
  format: 'samewise.recipe',
  version: 1,
  seed: 5,
  page: { paper: 'A4', orientation: 'portrait', margin: 'usual' },
  print: 'colour',
  colours: ['red', 'blue', 'green', 'yellow'],
  pictures: OWN_PICTURES,
  onlyOwnPictures: false,
  hand: 'left',
  size: 'usual',
  ink: 'saving',
  parts: [
    {
      activity: 'in-every-box',
      step: 2,
      values: { boxes: 3, content: 'colours' },
      tasks: 2,
      sheets: 1,
    },
    { activity: 'odd-one-out', step: 1, tasks: 1, sheets: 3 },
  ],
  letters: 'Wren',
  ownLetters: true,
  goals: [],
  toCut: ['pieces', 'key-card'],
  children: [{ name: 'Wren', shift: 1 }, { name: '../Moss' }],
  sortedBy: 'child',
  onlyWith: STOCK,
  made: 'printed',
  quick: false,
};

const MOST_MADE = 3;

export function recipeFileKind(): Kind<string> {
  return {
    name: 'recipe-file',
    inputs: changedTexts([...PLAIN, FULL]),
    meet: (text) => {
      const recipe = acceptedOrTold(readRecipeText(text));
      if (recipe) goOn(recipe);
    },
    show: (text) => text,
  };
}

function goOn(recipe: Recipe): void {
  const { parts, children = [], seed = 0 } = recipe;
  for (const part of parts.slice(0, MOST_MADE)) acceptedOrTold(makePartSheet(recipe, part, seed));
  for (const [index, { name }] of children.entries()) {
    isOneFileName(`${childFileName({ number: index + 1, name }, children.length)}.pdf`);
  }
}

/** Files that say what is in the house. */
export function stockFileKind(): Kind<string> {
  return {
    name: 'stock-file',
    inputs: changedTexts([{ format: 'samewise.stock', version: 1, ...STOCK }]),
    meet: (text) => void acceptedOrTold(readStockText(text)),
    show: (text) => text,
  };
}
