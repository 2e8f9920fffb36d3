// Tasks of follow-the-line that break a rule on purpose.
import { type Figure, sameFigure } from '../../figures/index.ts';
import {
  exchanged,
  type Made,
  placesWhere,
  replaced,
  type WrongWays,
  without,
} from '../wrong-ways.ts';
import type { Answer, Curve, FieldPoint, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

/** Lines so far apart cannot be kept apart by eye, in mm. */
const TOO_NEAR_MM = 2;

export const WRONG: WrongWays<Printed, Answer> = {
  'R1 the key has two ends exchanged': (task, random) => {
    const [one = 0, other = 0] = random.sample([...task.answer.keys()], 2);
    return { ...task, answer: exchanged(task.answer, one, other) };
  },
  'R1 two lines end at each other’s ends': (task, random) => {
    const [one = 0, other = 0] = random.sample([...task.printed.lines.keys()], 2);
    const { lines } = task.printed;
    const [first, second] = [lines[one], lines[other]];
    if (!first || !second) return undefined;
    const changed = replaced(lines, one, endingAs(first, second));
    return withLines(task, replaced(changed, other, endingAs(second, first)));
  },
  'R1 two lines end at one end': (task, random) => {
    const [one = 0, other = 0] = random.sample([...task.printed.lines.keys()], 2);
    const { lines } = task.printed;
    const [first, second] = [lines[one], lines[other]];
    return first && second && withLines(task, replaced(lines, one, endingAs(first, second)));
  },
  'R1 a line is missing': (task, random) => {
    const gone = random.int(0, task.printed.lines.length - 1);
    const { lines, colours } = task.printed;
    const kept = colours ? { colours: without(colours, gone) } : {};
    return { ...task, printed: { ...task.printed, ...kept, lines: without(lines, gone) } };
  },
  'R3 a line runs beside another': (task, random) => {
    const [one = 0, other = 0] = random.sample([...task.printed.lines.keys()], 2);
    const { lines } = task.printed;
    const [first, second] = [lines[one], lines[other]];
    return first && second && withLines(task, replaced(lines, one, beside(first, second)));
  },
  'R5 a line turns back': (task, random) => {
    const at = random.int(0, task.printed.lines.length - 1);
    const line = task.printed.lines[at];
    return line && withLines(task, replaced(task.printed.lines, at, turningBack(line)));
  },
  'R6 two starts are alike': (task) => {
    const starts = withTwoAlike(task.printed.starts);
    return starts && { ...task, printed: { ...task.printed, starts } };
  },
  'R6 two ends are alike': (task) => {
    const ends = task.printed.ends && withTwoAlike(task.printed.ends);
    return ends && { ...task, printed: { ...task.printed, ends } };
  },
  'R6 two lines have their colours exchanged': (task, random) => {
    const { colours, starts } = task.printed;
    if (!colours || starts.some(({ colour }) => colour === undefined)) return undefined;
    const [one = 0, other = 0] = random.sample([...colours.keys()], 2);
    return { ...task, printed: { ...task.printed, colours: exchanged(colours, one, other) } };
  },
  'R6 an end looks like a start': (task, random) => {
    const { starts, ends } = task.printed;
    if (!ends) return undefined;
    const changed = replaced(ends, random.int(0, ends.length - 1), random.pick(starts));
    return { ...task, printed: { ...task.printed, ends: changed } };
  },
};

function withLines(task: Task, lines: readonly Curve[]): Task {
  return { ...task, printed: { ...task.printed, lines } };
}

function withTwoAlike(figures: readonly Figure[]): readonly Figure[] | undefined {
  const [first, second] = figures;
  if (!first || !second || sameFigure(first, second)) return undefined;
  return replaced(figures, 1, first);
}

/** The last piece of a line led to where another one ends. */
function endingAs(line: Curve, other: Curve): Curve {
  const last = other.slice(-2);
  return [...line.slice(0, -2), ...last];
}

/** From its own start to its own end, and between them beside another line. */
function beside(line: Curve, other: Curve): Curve {
  const lead = placesWhere(other, (_, at) => at > 0 && at < other.length - 1).map((at) => {
    const [along, across] = other[at] as FieldPoint;
    return [along, across + TOO_NEAR_MM] as const;
  });
  return [...line.slice(0, 1), ...lead, ...line.slice(-1)];
}

/** Its first piece runs back behind its own start and comes again. */
function turningBack(line: Curve): Curve {
  const [first, , second, ...others] = line;
  if (!first || !second) return line;
  const reach = (line[3]?.[0] ?? 0) - first[0];
  return [first, [first[0] + 3 * reach, first[1]], [second[0] - 3 * reach, second[1]], ...others];
}
