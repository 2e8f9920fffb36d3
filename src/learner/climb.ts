// The ladder of an activity with some values asked for: what the other values then have to be at each step.
import type { Activity, Value, Values } from '../activities/index.ts';
import { accept, type Refusal, type Result } from '../base/index.ts';
import type { PrintStyle } from '../page/index.ts';

/** Values that are to stay whatever else gives way. */
export type Asked = Readonly<Record<string, Value>>;

/** A value that gives way can push out another; no activity has more parameters than this. */
const MOST_ROUNDS = 16;

/**
 * Values for every step, in order. Each rung's change is made on top of what the rung before it came to, so
 * that what had to give way to `asked` stays so; a rung that leads to another content changes nothing where a
 * content is asked for. Refuses what cannot be had at the first step.
 */
export function climb(
  activity: Activity,
  asked: Asked,
  style: PrintStyle,
): Result<readonly Values[]> {
  const [first] = activity.ladder;
  if (!first) throw new Error(`learner › climb: ${activity.id} has no steps`);
  const start = settle(activity, first.values, asked, first.values, style);
  if (!start.ok) return start;
  const climbed = [start.value];
  for (const [index, rung] of activity.ladder.slice(1).entries()) {
    const before = climbed[index] ?? start.value;
    const below = activity.ladder[index]?.values ?? {};
    const changes = changesFrom(below, rung.values);
    const isOther = Object.hasOwn(asked, 'content') && Object.hasOwn(changes, 'content');
    const next = isOther
      ? accept(before)
      : settle(activity, raised(before, below, changes), asked, before, style);
    climbed.push(next.ok ? next.value : before);
  }
  return accept(climbed);
}

/** The values with a rung's changes; a number that the rung raises and that stands higher already stays. */
function raised(before: Values, below: Values, changes: Asked): Values {
  const stays = (name: string, value: Value) =>
    Number(value) > Number(below[name]) && Number(before[name]) > Number(value);
  const made = Object.entries(changes).filter(([name, value]) => !stays(name, value));
  return { ...before, ...Object.fromEntries(made) };
}

/** The values of `to` that differ from `from`. */
export function changesFrom(from: Values, to: Values): Asked {
  return Object.fromEntries(Object.entries(to).filter(([name, value]) => from[name] !== value));
}

/** The nearest values that the activity accepts, with `asked` as it is; `before` is what a choice goes back to. */
export function settle(
  activity: Activity,
  wanted: Values,
  asked: Asked,
  before: Values,
  style: PrintStyle,
): Result<Values> {
  let values: Values = { ...wanted, ...asked };
  let read = activity.read(1, values, style);
  for (let round = 0; !read.ok && round < MOST_ROUNDS; round++) {
    const mend = read.refusals
      .map((refusal) => mendOf(refusal, before))
      .find(([name, value]) => value !== undefined && !Object.hasOwn(asked, name));
    if (mend?.[1] === undefined || values[mend[0]] === mend[1]) return read;
    values = { ...values, [mend[0]]: mend[1] };
    read = activity.read(1, values, style);
  }
  return read;
}

/** The refused parameter and what it becomes: a number the nearest allowed, a choice what it was or the nearest. */
function mendOf(refusal: Refusal, before: Values): readonly [string, Value | undefined] {
  const name = refusal.at.split(' › ').at(-1) ?? '';
  if (refusal.code === 'out-of-range' && typeof refusal.got === 'number') {
    return [name, Math.min(refusal.max, Math.max(refusal.min, refusal.got))];
  }
  if (refusal.code !== 'not-a-choice') return [name, undefined];
  const was = before[name];
  // A refusal lists its choices as text, whatever they are.
  const isBack = was !== refusal.got && refusal.choices.includes(String(was));
  const next = isBack ? String(was) : (refusal.nearest ?? refusal.choices[0]);
  if (next === undefined) return [name, undefined];
  if (typeof refusal.got === 'boolean') return [name, next === 'true'];
  return [name, typeof refusal.got === 'number' ? Number(next) : next];
}
