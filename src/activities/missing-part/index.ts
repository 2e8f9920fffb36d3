// The activity missing-part: which piece finishes it?
import { sameFigure } from '../../figures/index.ts';
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
import { pieces } from './pieces.ts';
import { solve } from './solve.ts';
import { type Answer, answerSchema, ID, PARAMETERS, printedSchema } from './task.ts';
import { WORDS } from './words.ts';

export const missingPart = defineActivity({
  id: ID,
  codeNumber: 12,
  skill: 'parts',
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
  decisions,
  room,
  draw,
  materials: materialsOf,
  pieces,
  messages: MESSAGES,
  words: WORDS,
});

/** The same figures in the same cells. */
function sameAnswer({ figures }: Answer, other: Answer): boolean {
  return (
    figures.length === other.figures.length &&
    figures.every((figure, cell) => sameFigure(figure, other.figures[cell] ?? {}))
  );
}
