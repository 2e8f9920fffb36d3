// The activity shadows: which shadow is its own?
import { defineActivity } from '../activity.ts';
import { chance } from './chance.ts';
import { decisions } from './decisions.ts';
import { draw, room } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { materialsOf } from './materials.ts';
import { MESSAGES } from './messages-en.ts';
import { solve } from './solve.ts';
import { answerSchema, ID, PARAMETERS, printedSchema } from './task.ts';
import { WORDS } from './words.ts';

export const shadows = defineActivity({
  id: ID,
  codeNumber: 13,
  skill: 'parts',
  parameters: PARAMETERS,
  limits: limitsOf,
  ladder: LADDER,
  printed: printedSchema,
  answer: answerSchema,
  generate,
  solve,
  sameAnswer: (one, other) => JSON.stringify(one) === JSON.stringify(other),
  features,
  chance,
  decisions,
  room,
  draw,
  hangsOnFilling: () => true,
  materials: materialsOf,
  messages: MESSAGES,
  words: WORDS,
});
