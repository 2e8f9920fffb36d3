// Times how long our solvers take against a general one that is told the same rules, on the same tasks.
import { activityOf } from '../src/activities/index.ts';
import { randomFrom } from '../src/base/index.ts';
import {
  type Boxes,
  completionsBySolver,
  type Grid,
  sharedBySolver,
  solveNothing,
} from './general-solver.ts';

const TASKS = 120;
const ROUNDS = 5;
const COLOUR = { print: 'colour' } as const;

/**
 * For both activities the median task over the whole ladder. Ours reads the page from the file, follows every reading
 * and looks for faults; the general solver is told the bare rule and finds all answers, or a second one.
 */
export function measureAgainstASolver(): void {
  const start = medianMs(Array.from({ length: TASKS }), solveNothing);
  console.log(
    `\nfinding all answers of one task, against MiniSat (logic-solver) told the bare rule; ${start.toFixed(3)} ms of its time is its start`,
  );
  measure('in-every-box', (printed) => sharedBySolver(printed as Boxes).length);
  measure('one-of-each', (printed) => completionsBySolver(printed as Grid, 2).length);
}

function measure(id: 'in-every-box' | 'one-of-each', bySolver: (printed: unknown) => number): void {
  const activity = activityOf(id);
  const pages = Array.from({ length: TASKS }, (_, seed) => {
    const { values } = activity.ladder[seed % activity.ladder.length] ?? { values: {} };
    return activity.generate(values, randomFrom(seed), COLOUR).printed;
  });
  const ours = medianMs(pages, (printed) => activity.solve(printed).answers.length);
  const general = medianMs(pages, bySolver);
  console.log(
    `  ${id.padEnd(14)} ${ours.toFixed(3)} ms, the general solver ${general.toFixed(3)} ms: ${(general / ours).toFixed(1)} × as long`,
  );
}

/** The median over the pages of the shortest of several rounds; a page without an answer is a defect. */
function medianMs(pages: readonly unknown[], solve: (printed: unknown) => number): number {
  const times = pages.map((printed) => {
    const rounds = Array.from({ length: ROUNDS }, () => {
      const start = process.hrtime.bigint();
      if (solve(printed) === 0) throw new Error(`no answer: ${JSON.stringify(printed)}`);
      return Number(process.hrtime.bigint() - start) / 1e6;
    });
    return Math.min(...rounds);
  });
  return times.sort((one, other) => one - other)[Math.floor(times.length / 2)] ?? Number.NaN;
}
