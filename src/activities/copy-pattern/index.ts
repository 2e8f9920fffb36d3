// The activity copy-pattern: make the same in every box.
import { defineActivity } from '../activity.ts';
import { chance } from './chance.ts';
import { draw, room } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { materialsOf } from './materials.ts';
import { MESSAGES } from './messages-en.ts';
import { PARAMETERS } from './parameters.ts';
import { pieces } from './pieces.ts';
import { hangsOnFilling } from './reading.ts';
import { sameAnswer } from './same-answer.ts';
import { solve } from './solve.ts';
import { answerSchema, printedSchema } from './task.ts';
import { WORDS } from './words.ts';

export { classOf, type PatternClass } from './classes.ts';

export const copyPattern = defineActivity({
  id: 'copy-pattern',
  codeNumber: 3,
  skill: 'patterns',
  parameters: PARAMETERS,
  limits: limitsOf,
  ladder: LADDER,
  printed: printedSchema,
  answer: answerSchema,
  generate,
  solve,
  sameAnswer,
  features,
  chance,
  room,
  draw,
  hangsOnFilling,
  materials: materialsOf,
  pieces,
  messages: MESSAGES,
  words: WORDS,
});
