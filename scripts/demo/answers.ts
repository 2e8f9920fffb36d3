// How an invented child answers the tasks of a sheet, and what it takes for what.
import type { Decision, Option } from '../../src/activities/index.ts';
import type { Random } from '../../src/base/index.ts';
import { figureName, pairLikeness } from '../../src/figures/index.ts';
import { type HelpLevel, rightProbability } from '../../src/learner/index.ts';
import type { DemoChoice } from '../../src/plan/demo/rows.ts';
import { pairNames, type SheetFacts, type TaskFacts } from '../../src/plan/index.ts';
import type { Outcome } from '../../src/records/index.ts';
import { drawn, isSo } from '../simulation/chances.ts';
import type { MixUp } from './cast.ts';

/** A child in the form of the day, in front of a sheet. */
export interface Answering {
  /** Logits, the form of the day included. */
  readonly ability: number;
  readonly lapse: number;
  /** The help that the adult gives where it does. */
  readonly help: HelpLevel;
  readonly mixesUp?: MixUp;
}

export interface Answered {
  readonly outcome: Outcome;
  readonly choice?: Omit<DemoChoice, 'task'>;
  readonly isPair: boolean;
}

/** How often the adult helps where a task was not right alone, and notes what was chosen instead. */
const HELPS = 0.5;
const NOTES_CHOICE = 0.8;
/** A child that does not look chooses anything, as the learner has it. */
const LEAST_LIKENESS = 0.1;

export function answersTo(
  { tasks }: SheetFacts,
  child: Answering,
  random: Random,
): readonly Answered[] {
  return tasks.map((task) => answerTo(task, child, random.fork()));
}

function answerTo(task: TaskFacts, child: Answering, random: Random): Answered {
  const pair = child.mixesUp && optionOfPair(task, child.mixesUp);
  const isPair = pair !== undefined && isSo(random, child.mixesUp?.taken ?? 0);
  const alone = rightProbability(child.ability, { ...task, lapse: child.lapse });
  if (!isPair && isSo(random, alone)) return { outcome: 'right', isPair };
  const wrong = isPair ? pair : wrongOption(task, random);
  const choice = wrong && isSo(random, NOTES_CHOICE) ? choiceOf(wrong) : undefined;
  return { outcome: outcomeOf(task, child, random), isPair, ...(choice ? { choice } : {}) };
}

/** Of a task that was not right alone. */
function outcomeOf(task: TaskFacts, { ability, lapse, help }: Answering, random: Random): Outcome {
  const alone = rightProbability(ability, { ...task, lapse });
  const helped = rightProbability(ability, { ...task, lapse }, help);
  const isHelped = isSo(random, HELPS) && isSo(random, (helped - alone) / (1 - alone));
  return isHelped ? 'with-help' : 'not-yet';
}

interface Chosen {
  readonly decision: Decision;
  readonly option: Option;
}

/** How many choices of the sheet have both of the pair, one of them right, and something else too. */
export function meetingsOf({ tasks }: SheetFacts, mixUp: MixUp): number {
  return tasks.filter((task) => optionOfPair(task, mixUp)).length;
}

function optionOfPair({ decisions }: TaskFacts, { pair }: MixUp): Chosen | undefined {
  return decisions
    .flatMap((decision) => wrongOf(decision).map((option) => ({ decision, option })))
    .find(({ decision: { takenFor }, option }) => {
      const names = takenFor ? pairNames(takenFor, option.figure) : [];
      return [...names].sort().join() === pair.join();
    });
}

/** The more like the right one, the likelier. */
function wrongOption({ decisions }: TaskFacts, random: Random): Chosen | undefined {
  const some = decisions.filter((decision) => wrongOf(decision).length > 0);
  if (some.length === 0) return undefined;
  const decision = random.pick(some);
  const options = wrongOf(decision);
  const pulls = options.map(({ figure }) =>
    Math.max(LEAST_LIKENESS, decision.takenFor ? pairLikeness(decision.takenFor, figure) : 0),
  );
  const option = options[drawn(random, pulls)];
  return option && { decision, option };
}

function wrongOf({ options }: Decision): readonly Option[] {
  return options.filter(({ isRight }) => !isRight);
}

/** As it is noted: by the mark that is tapped, or by the mark that the decision is about. */
function choiceOf({ decision: { about }, option }: Chosen): Omit<DemoChoice, 'task'> | undefined {
  const place = about ?? option.mark;
  return place === undefined ? undefined : { place, label: figureName(option.figure) };
}
