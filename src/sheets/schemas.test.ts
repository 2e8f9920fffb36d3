// What the JSON Schemas promise: they name every field and close every object, as the readers do.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../activities/index.ts';
import { SCHEMAS } from './schemas.ts';

type Json = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Json => typeof value === 'object' && value !== null;

function at(schema: unknown, ...path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => (isObject(value) ? value[key] : undefined), schema);
}

function openObjects(schema: unknown, path = ''): string[] {
  if (!isObject(schema)) return [];
  const isOpen = schema.type === 'object' && schema.additionalProperties !== false;
  return [
    ...(isOpen ? [path] : []),
    ...Object.entries(schema).flatMap(([key, value]) => openObjects(value, `${path}/${key}`)),
  ];
}

describe('the schemas', () => {
  it('are JSON, and leave no object open to unknown fields', () => {
    for (const schema of Object.values(SCHEMAS)) {
      expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
      expect(openObjects(schema)).toEqual([]);
    }
  });

  it('of the pack file asks for the answer beside the printed facts', () => {
    const sheets = at(SCHEMAS.pack, 'properties', 'sheets', 'items', 'oneOf');
    expect(sheets).toHaveLength(ACTIVITY_IDS.length);
    const required = (Array.isArray(sheets) ? sheets : []).map((sheet) =>
      at(sheet, 'properties', 'tasks', 'items', 'required'),
    );
    for (const names of required) expect(names).toContain('answer');
    expect(required).toEqual(
      expect.arrayContaining([
        ['boxes', 'answer'],
        ['key', 'items', 'answer'],
        ['model', 'boxes', 'answer'],
      ]),
    );
  });

  it('of the recipe knows every parameter of every activity', () => {
    const parts = at(SCHEMAS.recipe, 'properties', 'parts', 'items', 'oneOf');
    const names = (Array.isArray(parts) ? parts : []).map((part) =>
      Object.keys(at(part, 'properties', 'values', 'properties') ?? {}),
    );
    expect(names).toEqual(ACTIVITY_IDS.map((id) => Object.keys(activityOf(id).parameters)));
  });
});
