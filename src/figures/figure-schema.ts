// Reads one figure from a file: every field known, every value within its range.
import { z } from 'zod';
import { COLOUR_NAMES } from '../palette/index.ts';
import { LEAST_DOT_SIZE, MOST_DOTS, mostDotSize } from './dots.ts';
import { DOT_LAYOUTS, FILLS, type Figure, formOf, layoutOf } from './figure.ts';
import { FORMS, type FormId, isSign } from './form-names.ts';
import { idOfOwn, isOwnPicture } from './own-forms.ts';
import { isOwnKnown } from './own-pictures.ts';

/** The least size that prints clearly in a cell of 12 mm and up; share of the full size, by eye. */
export const LEAST_SIZE = 0.2;

/** Those that are always there, and pictures of a family's own that are known here. */
function isForm(form: string): form is FormId {
  if ((FORMS as readonly string[]).includes(form)) return true;
  const own = form as FormId;
  return isOwnPicture(own) && isOwnKnown(idOfOwn(own));
}

/** Says of any other what an enumeration says, so that a slip is answered with what is known. */
const formSchema = z
  .custom<FormId>()
  .superRefine((form, context) => {
    if (typeof form === 'string' && isForm(form)) return;
    // What is no form is read no further: checks of the whole figure rely on one.
    context.addIssue({ code: 'invalid_value', values: [...FORMS], input: form, continue: false });
  })
  .meta({ anyOf: [{ enum: FORMS }, { pattern: '^picture-own-[2-9A-Y]{7}$' }], type: 'string' });

/** One figure; refuses unknown fields and forms, and fields that do not apply to its form. */
export const figureSchema: z.ZodType<Figure> = z
  .strictObject({
    form: formSchema.optional(),
    colour: z.enum(COLOUR_NAMES).optional(),
    size: z.number().min(LEAST_SIZE).max(1).optional(),
    turn: z.int().min(0).max(359).optional(),
    mirrored: z.boolean().optional(),
    count: z.int().min(1).max(MOST_DOTS).optional(),
    layout: z.enum(DOT_LAYOUTS).optional(),
    dotSize: z.number().min(LEAST_DOT_SIZE).optional(),
    fill: z.enum(FILLS).optional(),
  })
  .superRefine((figure, context) => {
    for (const [path, message] of misfits(figure)) {
      context.addIssue({ code: 'custom', path: [path], message });
    }
  });

/** Fields that do not go with the form, and why. */
function misfits(figure: Figure): readonly (readonly [field: string, reason: string])[] {
  const form = formOf(figure);
  if (form === 'dots') {
    const texture =
      figure.fill !== undefined && figure.fill !== 'solid' && figure.fill !== 'outline';
    return [
      ...(figure.count === undefined ? [['count', 'dots need a count'] as const] : []),
      ...(areDotsTooBig(figure) ? [['dotSize', 'dots this big would touch'] as const] : []),
      ...(texture ? [['fill', 'dots are too small for a texture'] as const] : []),
    ];
  }
  const lined = isSign(form) && figure.fill !== undefined && figure.fill !== 'solid';
  return [
    ...(figure.count === undefined ? [] : [['count', 'only dots have a count'] as const]),
    ...(figure.layout === undefined ? [] : [['layout', 'only dots have a layout'] as const]),
    ...(figure.dotSize === undefined ? [] : [['dotSize', 'only dots have a dot size'] as const]),
    ...(lined ? [['fill', 'a sign is a line and has no fill'] as const] : []),
  ];
}

function areDotsTooBig(figure: Figure): boolean {
  const { count = 1, dotSize = 1 } = figure;
  return dotSize !== 1 && dotSize > mostDotSize(count, layoutOf(figure));
}
