// The activity look-and-remember: look, fold, find them.
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

export const lookAndRemember = defineActivity({
  id: ID,
  codeNumber: 17,
  skill: 'memory',
  parameters: PARAMETERS,
  limits: limitsOf,
  ladder: LADDER,
  printed: printedSchema,
  answer: answerSchema,
  generate,
  solve,
  sameAnswer: (one, other) => one.join() === other.join(),
  features,
  chance,
  decisions,
  room,
  draw,
  materials: materialsOf,
  messages: MESSAGES,
  words: WORDS,
});
