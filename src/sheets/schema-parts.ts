// Parts of schemas that say in their fault what is allowed, in a form that refusals read back.
import { z } from 'zod';

/** A whole number within a range, both ends included. */
export function wholeNumber(min: number, max: number): z.ZodInt {
  const error = `whole number ${min}..${max}`;
  return z.int({ error }).min(min, { error }).max(max, { error });
}

/** The range that a fault of `wholeNumber` names. */
export function rangeIn(
  message: string,
): { readonly min: number; readonly max: number } | undefined {
  const found = /^whole number (-?\d+)\.\.(-?\d+)$/.exec(message);
  return found ? { min: Number(found[1]), max: Number(found[2]) } : undefined;
}

const FIELDS = 'fields: ';

/** An object that has these fields and no others. */
export function closedObject<S extends z.core.$ZodLooseShape>(shape: S) {
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys' ? FIELDS + Object.keys(shape).join(' ') : undefined,
  });
}

/** The fields that a fault of `closedObject` names; none where the schema is another's. */
export function fieldsIn(message: string): readonly string[] {
  return message.startsWith(FIELDS) ? message.slice(FIELDS.length).split(' ') : [];
}
