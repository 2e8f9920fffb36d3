// The activity one-of-each: fill the grid so that each row and column has one of each.
import { defineActivity } from '../activity.ts';
import { sameFigures } from '../same-figures.ts';
import { chance } from './chance.ts';
import { draw, room } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { materialsOf } from './materials.ts';
import { MESSAGES } from './messages-en.ts';
import { pieces } from './pieces.ts';
import { solve } from './solve.ts';
import { answerSchema, ID, PARAMETERS, printedSchema } from './task.ts';
import { WORDS } from './words.ts';

export const oneOfEach = defineActivity({
  id: ID,
  codeNumber: 15,
  skill: 'rules',
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
  room,
  draw,
  // Empty circles and outlines stand among the figures.
  hangsOnFilling: ({ response }) =>
    response === 'sticker' || response === 'counters' || response === 'colour-in',
  materials: materialsOf,
  pieces,
  messages: MESSAGES,
  words: WORDS,
});
