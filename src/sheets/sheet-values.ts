// The values of a sheet: the step's own with those that the sheet changes, and back.
import { activityOf, type Value, type Values } from '../activities/index.ts';
import type { Result } from '../base/index.ts';
import { type SheetSpec, styleOf } from './sheet-spec.ts';

/** All values of a sheet; refuses what the activity refuses. */
export function valuesOf(
  spec: Pick<SheetSpec, 'activity' | 'step' | 'values' | 'print' | 'colours' | 'pictures'>,
): Result<Values> {
  return activityOf(spec.activity).read(spec.step, spec.values, styleOf(spec));
}

/** Those of `values` that differ from the step's own. */
export function changesOf(
  { activity, step }: Pick<SheetSpec, 'activity' | 'step'>,
  values: Values,
): Readonly<Record<string, Value>> {
  const own = activityOf(activity).ladder[step - 1]?.values ?? {};
  return Object.fromEntries(Object.entries(values).filter(([name, value]) => own[name] !== value));
}
