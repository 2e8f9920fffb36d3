// What the wishes for plans say; fetched with the first screen that plans.

import type { HOME_PAPERS, PrintStyle } from '../../page/index.ts';
import type { MaterialKind } from '../../plan/index.ts';

const THING_NAMES: Readonly<Record<MaterialKind, string>> = {
  sticker: 'stickers',
  crayon: 'crayons',
  pencil: 'a pencil',
  scissors: 'scissors with round ends',
  glue: 'a glue stick',
};

const PAPER_LABELS: Readonly<Record<(typeof HOME_PAPERS)[number], string>> = {
  A4: 'A4',
  Letter: 'US Letter',
};

const PRINT_LABELS: Readonly<Record<PrintStyle['print'], string>> = {
  colour: 'colour',
  grey: 'grey',
};

export const words = {
  wishes: 'Wishes for plans',
  minutes: 'How long a day',
  minutesHelp: 'About so many minutes, in two to four sheets.',
  minuteNames: { 5: '5 minutes', 10: '10 minutes', 15: '15 minutes', 20: '20 minutes' },
  paper: 'Paper',
  papers: PAPER_LABELS,
  print: 'Printed in',
  printHelp: 'In grey each colour also carries a letter.',
  prints: PRINT_LABELS,
  things: 'In the house',
  thingsHelp: 'A sheet that needs anything else is not planned.',
  thingNames: THING_NAMES,
  counted:
    'What is in the house was counted: plans keep to its colours, sizes, tools and printer. Change it in',
  countedLink: 'Supplies',
} as const;
