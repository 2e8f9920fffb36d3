// The activity crossing-table: put each in its row and column.
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

export const crossingTable = defineActivity({
  id: ID,
  codeNumber: 16,
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
  materials: materialsOf,
  pieces,
  messages: MESSAGES,
  words: WORDS,
});
