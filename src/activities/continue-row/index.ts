// The activity continue-row: what comes next?
import { defineActivity } from '../activity.ts';
import { sameFigures } from '../same-figures.ts';
import { chance } from './chance.ts';
import { decisions } from './decisions.ts';
import { draw, room } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { materialsOf } from './materials.ts';
import { MESSAGES } from './messages-en.ts';
import { pieces } from './pieces.ts';
import { solve } from './solve.ts';
import { answerSchema, ID, PARAMETERS, printedSchema, responseTo } from './task.ts';
import { WORDS } from './words.ts';

export const continueRow = defineActivity({
  id: ID,
  codeNumber: 6,
  skill: 'patterns',
  parameters: PARAMETERS,
  limits: limitsOf,
  ladder: LADDER,
  printed: printedSchema,
  answer: answerSchema,
  generate,
  solve,
  sameAnswer: (one, other) => sameFigures(one.figures, other.figures),
  features,
  chance,
  decisions,
  room,
  draw,
  // Empty circles and outlines stand in the row.
  hangsOnFilling: (printed) => ['sticker', 'colour-in'].includes(responseTo(printed)),
  materials: materialsOf,
  pieces,
  messages: MESSAGES,
  words: WORDS,
});
