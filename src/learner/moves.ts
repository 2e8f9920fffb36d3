// Single changes of an activity's values, from which harder and easier sheets are found.
import type { Activity, AgeHint, Parameter, Value, Values } from '../activities/index.ts';
import type { PrintStyle } from '../page/index.ts';
import type { Asked } from './climb.ts';

/**
 * What is looked at and what the child does are never changed for difficulty alone: they are what was asked
 * for, and the house must have the things for it.
 */
const KEPT = ['content', 'response'];

/**
 * Every set of values that one change leads to and that the activity accepts; numbers move by `strides`, and
 * nothing is switched on that the ladder keeps for older children, such as left and right in one key.
 */
export function movesFrom(
  activity: Activity,
  values: Values,
  age: AgeHint,
  asked: Asked,
  strides: readonly number[],
  style: PrintStyle,
): readonly Values[] {
  const changes = Object.entries(activity.parameters).flatMap(([name, parameter]) =>
    isMovable(name, asked)
      ? otherValues(parameter, values[name], strides).map((value) => ({ ...values, [name]: value }))
      : [],
  );
  return changes.filter(
    (changed) => isForAge(activity, changed, age) && activity.read(1, changed, style).ok,
  );
}

/** Lengths in mm change how a sheet looks and not how hard it is. */
function isMovable(name: string, asked: Asked): boolean {
  return !KEPT.includes(name) && !name.endsWith('Mm') && !Object.hasOwn(asked, name);
}

/** Each switch stands as it does at some step for the age or younger. */
function isForAge({ parameters, ladder }: Activity, values: Values, age: AgeHint): boolean {
  const switches = Object.keys(parameters).filter((name) => parameters[name]?.kind === 'yes-no');
  const rungs = ladder.filter((rung) => rung.age <= age);
  return switches.every((name) => rungs.some((rung) => rung.values[name] === values[name]));
}

function otherValues(
  parameter: Parameter,
  value: Value | undefined,
  strides: readonly number[],
): readonly Value[] {
  if (parameter.kind === 'yes-no') return [value !== true];
  if (parameter.kind === 'choice') return parameter.values.filter((other) => other !== value);
  return strides
    .map((stride) => Number(value) + stride)
    .filter((other) => other >= parameter.min && other <= parameter.max);
}
