// The activity by-key: do to each figure what the key says.
import { defineActivity } from '../activity.ts';
import { chance } from './chance.ts';
import { decisions } from './decisions.ts';
import { draw, room } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limits } from './limits.ts';
import { materials } from './materials.ts';
import { MESSAGES } from './messages-en.ts';
import { PARAMETERS } from './parameters.ts';
import { solve } from './solve.ts';
import { answerSchema, printedSchema, sameAnswer } from './task.ts';
import { WORDS } from './words.ts';

export const byKey = defineActivity({
  id: 'by-key',
  codeNumber: 2,
  skill: 'rules',
  parameters: PARAMETERS,
  limits,
  ladder: LADDER,
  printed: printedSchema,
  answer: answerSchema,
  generate,
  solve,
  sameAnswer,
  features,
  chance,
  decisions,
  room,
  draw,
  materials,
  messages: MESSAGES,
  words: WORDS,
});
