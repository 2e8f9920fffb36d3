// The activity one-of-each: fill the grid so that each row and column has one of each.
import { sameFigure } from '../../figures/index.ts';
import { defineActivity } from '../activity.ts';
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
import { type Answer, answerSchema, ID, PARAMETERS, printedSchema } from './task.ts';
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
  sameAnswer,
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

function sameAnswer({ figures }: Answer, other: Answer): boolean {
  return (
    figures.length === other.figures.length &&
    figures.every((figure, place) => sameFigure(figure, other.figures[place] ?? {}))
  );
}
