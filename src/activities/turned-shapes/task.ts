// What a turned-shapes task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole, yesNo } from '../parameters.ts';

export const ID = 'turned-shapes';

/** Contents that are about a form; colours, textures, sizes and directions are what must be left out of mind. */
export const CONTENTS = [
  'shapes',
  'signs',
  'pictures',
  'capitals',
  'small-letters',
  'numerals',
  'cyrillic-capitals',
  'cyrillic-small',
  'greek-capitals',
  'greek-small',
  'devanagari-letters',
  'arabic-letters',
] as const;

export const PARAMETERS = {
  content: choice(...CONTENTS),
  response: choice('point', 'ring', 'cross'),
  /** How many there are to choose from. */
  choices: whole(3, 8),
  /** How many of them have the form of the model. */
  matches: whole(1, 3),
  /** By how much the right ones are turned; eighths may add up to any slant. */
  turn: choice('none', 'quarter', 'half', 'eighth'),
  /** How large the right ones are against the model. */
  resize: choice('none', 'bigger', 'smaller', 'both'),
  /** Yes: no two wrong ones are of one form. No: all of them are. */
  mixed: yesNo(),
  /** How like the model the other forms are. */
  likeness: choice('far', 'near'),
  /** One colour for all; several; or several, and a wrong one has the colour of the model. */
  colours: choice('one', 'mixed', 'lure'),
  /** Whether one of the wrong ones is the mirror image of the model. */
  mirrors: yesNo(),
  layout: choice('row', 'grid'),
};

export type TurnedValues = ValuesOf<typeof PARAMETERS>;
export type TurnedContent = TurnedValues['content'];
export type Response = TurnedValues['response'];

export interface Printed {
  /** Stands in a frame of its own. */
  readonly model: Figure;
  /** In reading order. */
  readonly choices: readonly Figure[];
  /** How many are to be found, as the child is told; absent: one. */
  readonly matches?: number | undefined;
  /** Whether the child is told that mirror images are not the same; absent: not. */
  readonly mirrors?: boolean | undefined;
  /** How the choices stand; absent: in a grid. */
  readonly layout?: TurnedValues['layout'] | undefined;
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
}

/** The places (0 upward, in reading order, rising) of the choices that have the form of the model. */
export type Answer = readonly number[];

/** More than any sheet holds; a limit against hostile files. */
const MOST_CHOICES = 12;

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  model: figureSchema,
  choices: z.array(figureSchema).min(1).max(MOST_CHOICES),
  matches: z.int().min(1).max(MOST_CHOICES).optional(),
  mirrors: z.boolean().optional(),
  layout: z.enum(PARAMETERS.layout.values).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_CHOICES - 1),
  )
  .min(1)
  .max(MOST_CHOICES);
