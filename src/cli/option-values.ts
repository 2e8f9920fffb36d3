// From the words of a command line to values: numbers, choices and parameters, refused by name of the option.
import {
  ACTIVITY_IDS,
  type Activity,
  type ActivityId,
  isActivityId,
  type Parameter,
  type Value,
  withNearestContent,
} from '../activities/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';
import { Refused } from './failure.ts';

/** A whole number written in plain digits, from `min` to `max`. */
export function wholeOf(text: string, at: string, min: number, max: number): number {
  if (!/^[+-]?\d+$/.test(text)) {
    const expected = `a whole number from ${min} to ${max}`;
    throw new Refused({ code: 'wrong-type', at, got: text, expected });
  }
  const number = Number(text);
  if (number < min || number > max) {
    throw new Refused({ code: 'out-of-range', at, got: number, min, max });
  }
  return number;
}

/** A number in decimal digits, such as -0.5. */
export function numberOf(text: string, at: string): number {
  if (/^[+-]?\d+(\.\d+)?$/.test(text)) return Number(text);
  throw new Refused({ code: 'wrong-type', at, got: text, expected: 'a number such as -0.5' });
}

/** One of the choices, in the given case or another. */
export function choiceOf<T extends string>(text: string, at: string, choices: readonly T[]): T {
  const found = choices.find((choice) => choice.toLowerCase() === text.toLowerCase());
  if (found === undefined) {
    throw new Refused(withNearestContent({ code: 'not-a-choice', at, got: text, choices }));
  }
  return found;
}

/** Names of colours with commas between them. */
export function coloursIn(text: string): readonly ColourName[] {
  return text.split(',').map((name) => choiceOf(name.trim(), '--colours', COLOUR_NAMES));
}

export function activityIdOf(text: string, at: string): ActivityId {
  if (!isActivityId(text)) {
    throw new Refused({ code: 'not-a-choice', at, got: text, choices: ACTIVITY_IDS });
  }
  return text;
}

/** Settings such as `boxes=4` as values of the activity's parameters; ranges are the activity's to judge. */
export function parameterValues(
  settings: readonly string[],
  activity: Activity,
): Readonly<Record<string, Value>> {
  const values = new Map<string, Value>();
  for (const setting of settings) {
    const [name, value] = parameterValue(setting, activity);
    if (values.has(name)) {
      const expected = 'each parameter once';
      throw new Refused({ code: 'unreadable', at: `--set ${name}`, got: setting, expected });
    }
    values.set(name, value);
  }
  return Object.fromEntries(values);
}

function parameterValue(setting: string, activity: Activity): readonly [string, Value] {
  const equals = setting.indexOf('=');
  if (equals < 1) {
    const expected = 'a parameter and its value, such as boxes=4';
    throw new Refused({ code: 'unreadable', at: '--set', got: setting, expected });
  }
  const [name, text] = [setting.slice(0, equals).trim(), setting.slice(equals + 1).trim()];
  const choices = Object.keys(activity.parameters);
  const parameter = Object.hasOwn(activity.parameters, name)
    ? activity.parameters[name]
    : undefined;
  if (!parameter) throw new Refused({ code: 'not-a-choice', at: '--set', got: name, choices });
  return [name, valueAs(parameter, text, `--set ${name}`)];
}

function valueAs(parameter: Parameter, text: string, at: string): Value {
  switch (parameter.kind) {
    case 'whole':
      return wholeOf(text, at, parameter.min, parameter.max);
    case 'choice':
      return choiceOf(text, at, parameter.values);
    case 'yes-no':
      return choiceOf(text, at, ['yes', 'no', 'true', 'false']).match(/yes|true/) !== null;
  }
}
