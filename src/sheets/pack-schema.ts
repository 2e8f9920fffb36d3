// The form of a pack file: the sheet here, its tasks as each activity prints them.
import { z } from 'zod';
import { ACTIVITY_IDS, type ActivityId, activityOf, FEATURE_NAMES } from '../activities/index.ts';
import { LONGEST_CODE } from './code-characters.ts';
import { ownPicturesSchema } from './own-pictures.ts';
import { LONGEST_NAME, MOST_CHILDREN } from './recipe.ts';
import { pageSchema } from './recipe-schema.ts';
import { closedObject, wholeNumber } from './schema-parts.ts';
import { MOST_SHEETS, MOST_TASKS } from './sheet-spec.ts';
import { TO_CUT } from './to-cut.ts';

/** How hard a task is said to be, in logits; what is said is checked, and never needed. */
export const difficultySchema = closedObject({
  logits: z.number(),
  parts: closedObject(
    Object.fromEntries(FEATURE_NAMES.map((name) => [name, z.number().optional()])),
  ),
});

function sheetSchema(id: ActivityId) {
  return closedObject({
    code: z.string().max(LONGEST_CODE),
    activity: z.literal(id),
    step: wholeNumber(1, activityOf(id).ladder.length),
    page: pageSchema,
    child: closedObject({
      number: wholeNumber(1, MOST_CHILDREN),
      name: z.string().min(1).max(LONGEST_NAME),
      isShared: z.boolean().optional(),
    }).optional(),
    edited: z.literal(true).optional().describe('Whether a person changed it.'),
    tasks: z.array(z.record(z.string(), z.unknown())).min(1).max(MOST_TASKS),
  });
}

const SHEET_SCHEMAS = ACTIVITY_IDS.map(sheetSchema) as unknown as readonly [
  ReturnType<typeof sheetSchema>,
  ...ReturnType<typeof sheetSchema>[],
];

export const PACK_FORMAT = 'samewise.pack';

/** All but what stands in the tasks, which is read by the activity's own schemas. */
export const packSchema = closedObject({
  format: z.literal(PACK_FORMAT),
  version: z.literal(1),
  toCut: z.array(z.enum(TO_CUT)).max(TO_CUT.length).optional(),
  pictures: ownPicturesSchema.optional().describe('Own pictures that the sheets show.'),
  sheets: z.array(z.discriminatedUnion('activity', SHEET_SCHEMAS)).min(1).max(MOST_SHEETS),
});

export type PackFile = z.infer<typeof packSchema>;
export type SheetFile = PackFile['sheets'][number];
