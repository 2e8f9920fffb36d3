// Tasks of an activity for every step with every value of every parameter, and all that is said of them.
import type { Activity, ActivityWords, Parameter, Task, Value } from '../src/activities/index.ts';
import { randomFrom } from '../src/base/index.ts';
import type { PrintStyle } from '../src/page/index.ts';
import { testSeed } from './seed.ts';

const STYLES: readonly PrintStyle[] = [
  { print: 'colour' },
  { print: 'grey', ink: 'saving' },
  { print: 'colour', hand: 'left' },
];

type Change = Readonly<Record<string, Value>>;

/**
 * Tasks of every step with each value of each parameter, and of some step that allows it: of each content with each
 * value of each other parameter, and `freely` times of any three values. The first of
 * these at `some` steps alone: where it takes long, and what could go wrong hardly hangs on the step.
 */
export function* everyTask(
  activity: Activity,
  freely: number,
  which: 'all' | 'some' = 'all',
): Generator<Task> {
  const random = randomFrom(freely);
  const steps = [...activity.ladder.keys()].map((step) => step + 1);
  const names = Object.keys(activity.parameters);
  const singles = names.flatMap((name) => changesOf(activity, name));
  const three = (): Change => {
    const some = random.sample(names, Math.min(3, names.length));
    return Object.assign({}, ...some.map((name) => random.pick(changesOf(activity, name))));
  };
  const several = [
    ...changesOf(activity, 'content').flatMap((content) =>
      singles.map((change) => ({ ...content, ...change })),
    ),
    ...Array.from({ length: freely }, three),
  ];
  const asked = [
    ...(which === 'all' ? steps : someOf(steps)).flatMap((step) =>
      singles.map((change) => ({ among: [step], change })),
    ),
    ...several.map((change) => ({ among: random.shuffle(steps), change })),
  ];
  for (const { among, change } of asked) {
    const style = random.pick(STYLES);
    const step = among.find((each) => activity.read(each, change, style).ok);
    if (step === undefined) continue;
    const read = activity.read(step, change, style);
    if (read.ok) yield activity.generate(read.value, random.fork(), style);
  }
}

/** The first, the middle and the last of the steps, and one that the seed draws. */
function someOf(steps: readonly number[]): readonly number[] {
  const drawn = randomFrom(testSeed('steps of every task')).pick(steps);
  const middle = Math.ceil(steps.length / 2);
  return steps.filter((step) => [1, middle, steps.length, drawn].includes(step));
}

/** Each value of a parameter. */
export function changesOf({ parameters }: Activity, name: string): readonly Change[] {
  const spec = parameters[name];
  return spec === undefined ? [] : valuesOf(spec).map((value) => ({ [name]: value }));
}

function valuesOf(spec: Parameter): readonly Value[] {
  if (spec.kind === 'choice') return spec.values;
  if (spec.kind === 'yes-no') return [false, true];
  return Array.from({ length: spec.max - spec.min + 1 }, (_, more) => spec.min + more);
}

/** All that is said before any task is made. */
export function saidAtOnce({ name, about, steps, parameters }: ActivityWords): readonly string[] {
  const ofParameters = Object.values(parameters).flatMap(({ label, help, choices = {} }) => [
    label,
    help,
    ...Object.values(choices),
  ]);
  return [name, about, ...steps, ...ofParameters];
}

/** All that is said of a task. */
export function saidOf(words: ActivityWords, { printed, answer }: Task): readonly string[] {
  const guides = [1, 2].flatMap((tasks) => words.guide?.(printed, tasks).words ?? []);
  return [
    ...words.say(printed),
    words.show(printed),
    ...words.help(printed),
    words.easierNow(printed),
    words.harderNow(printed),
    ...words.lookFor(printed),
    ...guides,
    words.describe(printed),
    words.answer(printed, answer),
  ];
}
