// Measures our solvers against a general one that is told the same rules, on the same tasks.
import { type ActivityId, activityOf, type Values } from '../src/activities/index.ts';
import { randomFrom } from '../src/base/index.ts';
import { boxesBySolver, numbersOf, orderBySolver, squareBySolver } from './general-making.ts';
import { boxAnswersBySolver, type Keyed, keyAnswersBySolver } from './general-proof.ts';
import {
  type Boxes,
  completionsBySolver,
  type Grid,
  sharedBySolver,
  solveNothing,
} from './general-solver.ts';

const TASKS = 36;
const ROUNDS = 2;
/** Shorter work is done over and over, since processor time is told in steps. */
const LEAST_MS = 4;
const COLOUR = { print: 'colour' } as const;
const MOST_ANSWERS = 20;

/** A task of ours with what it was made from. */
interface Sample {
  readonly values: Values;
  readonly seed: number;
  readonly printed: unknown;
}

/** How many answers are found: none, or more than one, is a defect of the measuring. */
type Work = (sample: Sample) => number;

/**
 * In processor time, the median task over the whole ladder. First finding all answers, where the general solver is told
 * the bare rule; then the whole job, where it makes the task as well and follows every reading.
 */
export function measureAgainstASolver(): void {
  const start = medianMs(samplesOf('in-every-box'), solveNothing);
  console.log(
    `\nfinding all answers of one task, against MiniSat (logic-solver) told the bare rule; ${start.toFixed(3)} ms of its time is its start`,
  );
  const shared: Work = ({ printed }) => Math.min(1, sharedBySolver(printed as Boxes).length);
  tell('in-every-box', solving('in-every-box'), shared);
  const completions: Work = ({ printed }) => completionsBySolver(printed as Grid, 2).length;
  tell('one-of-each', solving('one-of-each'), completions);
  console.log('making and proving one task under every reading, against MiniSat doing the same');
  tell('in-every-box', making('in-every-box'), makeBoxes);
  tell('by-key', making('by-key'), makeKeyed);
  tell('one-of-each', making('one-of-each'), makeSquare);
}

function samplesOf(id: ActivityId): readonly Sample[] {
  const { ladder, generate } = activityOf(id);
  return Array.from({ length: TASKS }, (_, seed) => {
    const { values } = ladder[seed % ladder.length] ?? { values: {} };
    return { values, seed, printed: generate(values, randomFrom(seed), COLOUR).printed };
  });
}

function solving(id: ActivityId): Work {
  const { solve } = activityOf(id);
  return ({ printed }) => solve(printed).answers.length;
}

function making(id: ActivityId): Work {
  const { generate, prove } = activityOf(id);
  return ({ values, seed }) =>
    prove(generate(values, randomFrom(seed), COLOUR)).proven ? 1 : Number.NaN;
}

/** With the figures and numbers of our task, so that only how they are dealt is made. */
const makeBoxes: Work = ({ printed, seed }) => {
  const { kinds, ...numbers } = numbersOf((printed as Boxes).boxes);
  const dealt = boxesBySolver(kinds.length, numbers, randomFrom(seed));
  const boxes = dealt?.map((box) => ({ figures: box.flatMap((kind) => kinds[kind] ?? []) }));
  return boxAnswersBySolver({ boxes: boxes ?? [] }).length;
};

const makeKeyed: Work = ({ printed, seed }) => {
  const { key, items: before, columns } = printed as Keyed & { readonly columns?: number };
  const order = orderBySolver(key.length, before.length, columns, randomFrom(seed)) ?? [];
  const items = order.flatMap((entry) => key[entry]?.figure ?? []);
  return keyAnswersBySolver({ key, items }).length;
};

const makeSquare: Work = ({ printed, seed }) => {
  const { figures, boxes = false, rows: before } = printed as Grid;
  const empty = before.flat().filter((figure) => figure === null).length;
  const rows = squareBySolver(figures, boxes, empty, randomFrom(seed));
  return completionsBySolver({ rows, figures, boxes }, MOST_ANSWERS).length;
};

function tell(id: ActivityId, own: Work, bySolver: Work): void {
  const samples = samplesOf(id);
  const [ours, general] = [medianMs(samples, own), medianMs(samples, bySolver)];
  console.log(
    `  ${id.padEnd(14)} ${ours.toFixed(3)} ms, the general solver ${general.toFixed(3)} ms: ${(general / ours).toFixed(1)} × as long`,
  );
}

/** The median over the tasks of the shortest of several rounds, after one that does not count. */
function medianMs(samples: readonly Sample[], work: Work): number {
  const times = samples.map((sample) => {
    if (work(sample) !== 1) throw new Error(`not one answer: ${JSON.stringify(sample)}`);
    return Math.min(...Array.from({ length: ROUNDS }, () => processorMs(() => work(sample))));
  });
  return times.sort((one, other) => one - other)[Math.floor(times.length / 2)] ?? Number.NaN;
}

/** Of one time; other work on the machine does not count. */
function processorMs(work: () => unknown): number {
  const start = process.cpuUsage();
  for (let times = 1; ; times++) {
    work();
    const { user, system } = process.cpuUsage(start);
    const ms = (user + system) / 1000;
    if (ms >= LEAST_MS) return ms / times;
  }
}
