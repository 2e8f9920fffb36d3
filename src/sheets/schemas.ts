// JSON Schemas of the recipe, of the pack file and of the stock, for editors and other programs.
import { z } from 'zod';
import { ACTIVITY_IDS, type ActivityId, activityOf } from '../activities/index.ts';
import { difficultySchema, packSchema } from './pack-schema.ts';
import { recipeSchema } from './recipe-schema.ts';
import { stockFileSchema } from './stock-facts.ts';

export type JsonSchema = Readonly<Record<string, unknown>>;

/** Written by hand nothing is filled in yet, so what has a default is not required. */
const AS_WRITTEN = { io: 'input', unrepresentable: 'any' } as const;

function schemaOf(schema: z.ZodType): JsonSchema {
  const { $schema: _, ...rest } = z.toJSONSchema(schema, AS_WRITTEN);
  return rest;
}

/** Printed facts and answer side by side, as they stand in the file. */
function taskSchema(id: ActivityId): JsonSchema {
  const { printed, answer } = activityOf(id);
  const facts = schemaOf(printed);
  const { properties, required } = facts;
  if (typeof properties !== 'object' || !Array.isArray(required)) {
    throw new Error(`${id}: what is printed must be one object, to stand beside its answer`);
  }
  return {
    ...facts,
    properties: {
      ...properties,
      answer: schemaOf(answer),
      difficulty: schemaOf(difficultySchema),
    },
    required: [...required, 'answer'],
  };
}

function sheetSchema(id: ActivityId): JsonSchema {
  const [branch] = packSchema.shape.sheets.element.options.filter(
    (option) => option.shape.activity.value === id,
  );
  if (!branch) throw new Error(`${id}: no schema for its sheets`);
  const sheet = schemaOf(branch);
  const { tasks } = sheet.properties as { readonly tasks: JsonSchema };
  return {
    ...sheet,
    properties: {
      ...(sheet.properties as JsonSchema),
      tasks: { ...tasks, items: taskSchema(id) },
    },
  };
}

function packJsonSchema(): JsonSchema {
  const pack = schemaOf(packSchema);
  const properties = pack.properties as { readonly sheets: JsonSchema };
  const sheets = { ...properties.sheets, items: { oneOf: ACTIVITY_IDS.map(sheetSchema) } };
  return { ...pack, properties: { ...properties, sheets } };
}

const DRAFT = 'https://json-schema.org/draft/2020-12/schema';

/** The schemas, by name. */
export const SCHEMAS = {
  pack: { $schema: DRAFT, title: 'Samewise pack', ...packJsonSchema() },
  recipe: { $schema: DRAFT, title: 'Samewise recipe', ...schemaOf(recipeSchema) },
  stock: { $schema: DRAFT, title: 'Samewise stock', ...schemaOf(stockFileSchema) },
} as const satisfies Readonly<Record<string, JsonSchema>>;
