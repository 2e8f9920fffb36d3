// The contract of an activity: what each folder hands over, and the form in which everything else sees it.
import type { z } from 'zod';
import {
  accept,
  type Random,
  type Refusal,
  type Result,
  refuse,
  type Told,
  told,
} from '../base/index.ts';
import { isOwnKnown, withPictures } from '../figures/index.ts';
import type { Language, Messages } from '../languages/index.ts';
import type { Group, PrintStyle } from '../page/index.ts';
import type { ColourName } from '../palette/index.ts';
import { MOST_CHANCE } from './chance.ts';
import { type Limits, refusalsWithColours } from './colours-at-hand.ts';
import type { Decision } from './decision.ts';
import type { Features } from './features.ts';
import { styleForTask } from './ink-saving.ts';
import { drawnFor, laidOutFor, piecesFor } from './mirrored-task.ts';
import { type ParameterSpecs, readValues, type Values, type ValuesOf } from './parameters.ts';
import type { Piece } from './pieces.ts';
import type { Size } from './size.ts';
import type { Skill } from './skills.ts';

/** The age, in years, that a step is a first guess for; the child decides. */
export type AgeHint = 3 | 4 | 5;

/** A rung of the ladder: complete values; each rung changes one thing against the one before it. */
export interface Step<V> {
  readonly values: V;
  readonly age: AgeHint;
  /** How many tasks make a good sheet of this step. */
  readonly tasks: number;
}

/** Everything true that can be said of a printed task: all its answers, and what makes it unfit. */
export interface Findings<A> {
  /** Every answer that the printed page admits, the intended one included; cut off at 20. */
  readonly answers: readonly A[];
  /** Reasons why the page cannot be read one way, such as a box that repeats a figure. */
  readonly faults: readonly Told[];
}

/** A thing to lay out before a sheet is given. */
export type Material =
  | {
      readonly kind: 'sticker';
      readonly colour: ColourName;
      readonly diameterMm: number;
      readonly count: number;
    }
  | { readonly kind: 'crayon'; readonly colour: ColourName }
  | { readonly kind: 'pencil' }
  /** For children, with round ends; never without an adult beside the child. */
  | { readonly kind: 'scissors' }
  | { readonly kind: 'glue' }
  /** Small ones in the colours of the task: small parts, not for children under three. */
  | { readonly kind: 'counters' };

export type { Size } from './size.ts';

/** A line for the adult with a small drawing beside it, which goes from (0, 0) to the size. */
export interface Guide extends Size {
  readonly words: string;
  readonly drawing: Group;
}

/** What an activity says, in one language. */
export interface ActivityWords<S extends ParameterSpecs = ParameterSpecs, P = unknown> {
  /** Short name, as in "6 tasks of **in every box**". */
  readonly name: string;
  /** What the child practises, one plain sentence for an adult. */
  readonly about: string;
  /** For each step: what changed against the one before, such as "three boxes become four". */
  readonly steps: readonly string[];
  readonly parameters: {
    readonly [K in keyof S]: {
      readonly label: string;
      readonly help: string;
      /** A phrase for each value of a choice. */
      readonly choices?: Readonly<Record<string, string>>;
    };
  };
  /** What the adult says to start: short sentences to the child. */
  readonly say: (printed: P) => readonly string[];
  /** How the adult shows one, in one or two sentences. */
  readonly show: (printed: P) => string;
  /**
   * Help that fits this task better than the general ladder of the adult's page, from least to most;
   * empty where there is none. What is said here and in the next three depends on nothing that `say` does not.
   */
  readonly help: (printed: P) => readonly string[];
  /** How to make it easier at once, on the same sheet: one sentence. */
  readonly easierNow: (printed: P) => string;
  /** How to make it harder at once, on the same sheet: one sentence. */
  readonly harderNow: (printed: P) => string;
  /** Slips to look for and what they may come from, never a diagnosis: one or two sentences. */
  readonly lookFor: (printed: P) => readonly string[];
  /** How the paper itself is to be handled, with a small drawing, where it is more than laid down; absent: it is not. */
  readonly guide?: (printed: P, tasks: number) => Guide;
  /** The task in words, for someone who cannot see the page; does not give the answer away. */
  readonly describe: (printed: P) => string;
  /** The answer in words, for the proof line and the adult: "Blue and red are in all 4 boxes." */
  readonly answer: (printed: P, answer: unknown) => string;
}

/** The parts that a folder hands to `defineActivity`. `P` is what is printed, `A` the answer. */
export interface ActivityParts<Id extends string, S extends ParameterSpecs, P, A> {
  readonly id: Id;
  /** Its number in sheet codes, 0 to 63; never used again for another activity. */
  readonly codeNumber: number;
  readonly skill: Skill;
  readonly parameters: S;
  /** What cannot be asked for together; empty where the values are valid. */
  readonly limits: (values: ValuesOf<S>, style: PrintStyle) => readonly Refusal[];
  readonly ladder: readonly Step<ValuesOf<S>>[];
  /** Reads what is printed; refuses unknown fields. */
  readonly printed: z.ZodType<P>;
  readonly answer: z.ZodType<A>;
  /** Never fails for valid values. */
  readonly generate: (
    values: ValuesOf<S>,
    random: Random,
    style: PrintStyle,
  ) => { readonly printed: P; readonly answer: A };
  /** Sees only what is printed; shares no code with `generate`. */
  readonly solve: (printed: P) => Findings<A>;
  readonly sameAnswer: (one: A, other: A) => boolean;
  /** What makes the task easy or hard, measured from what is printed. */
  readonly features: (printed: P) => Features;
  /** Probability that a child who answers blindly, in the form asked for, gets the whole of a fit task right: 0 to 1. */
  readonly chance: (printed: P) => number;
  /** Where a choice in the printed task shows what was chosen; absent: nowhere. */
  readonly decisions?: (printed: P, answer: A) => readonly Decision[];
  /** The least room one task needs, furniture of the sheet not counted; without a style, as for the right hand. */
  readonly room: (printed: P, style?: PrintStyle) => Size;
  /**
   * The task from (0, 0) to `size`, which is at least its room; with `answer`, the answer drawn in. As it is read from
   * left to right: for languages that are read from right to left all but figures is placed mirrored afterwards.
   */
  readonly draw: (printed: P, size: Size, style: PrintStyle, answer?: A) => Group;
  /**
   * Whether what is asked hangs on how figures are filled, beyond what the figures say (`styleForTask`), so that they
   * are never outlines to save ink; absent: it does not.
   */
  readonly hangsOnFilling?: (printed: P) => boolean;
  readonly materials: (printed: P, answer: A) => readonly Material[];
  /**
   * The figures of the answer as pieces to cut out and stick into the task's empty places, in the order of the answer,
   * for the task as it is drawn at this size; then pieces that belong nowhere, where the task offers such figures.
   * Absent, or none: no figure goes into an empty place.
   */
  readonly pieces?: (printed: P, answer: A, size: Size, style: PrintStyle) => readonly Piece[];
  /** Its English messages: what it refuses and what its solver finds wrong are keys of them. */
  readonly messages: Messages;
  readonly words: Readonly<Record<Language, ActivityWords<S, P>>>;
}

/** A task as the pack file holds it: printed facts and `answer` side by side. */
export interface Task {
  readonly printed: unknown;
  readonly answer: unknown;
}

/** Whether a task is certain: the answers that the page admits are exactly the key. */
export type Proof =
  | { readonly proven: true }
  | {
      readonly proven: false;
      readonly reason: 'wrong' | 'ambiguous' | 'unfit';
      readonly detail: Told;
    };

/** An activity as the rest of the program sees it: unknown values in, checked inside. */
export interface Activity {
  readonly id: string;
  readonly codeNumber: number;
  readonly skill: Skill;
  readonly parameters: ParameterSpecs;
  readonly ladder: readonly Step<Values>[];
  readonly printed: z.ZodType;
  readonly answer: z.ZodType;
  readonly messages: Messages;
  readonly words: Readonly<Record<Language, ActivityWords>>;
  /** Values for a step (1 upward) with some of them changed. */
  readonly read: (
    step: number,
    changes: Readonly<Record<string, unknown>>,
    style: PrintStyle,
  ) => Result<Values>;
  readonly generate: (values: Values, random: Random, style: PrintStyle) => Task;
  readonly solve: (printed: unknown) => Findings<unknown>;
  readonly prove: (task: Task) => Proof;
  readonly features: (printed: unknown) => Features;
  /** Probability that a child who answers blindly gets the whole of a proven task right: 0 to `MOST_CHANCE`. */
  readonly chance: (printed: unknown) => number;
  /** Where the child decides between things of which a wrong one can be noted; `draw` marks all that they name. */
  readonly decisions: (task: Task) => readonly Decision[];
  readonly room: (printed: unknown, style?: PrintStyle) => Size;
  readonly draw: (task: Task, size: Size, style: PrintStyle, withAnswer: boolean) => Group;
  readonly materials: (task: Task) => readonly Material[];
  /** Pieces to cut out for the task as it is drawn at this size; none where no figure goes into an empty place. */
  readonly pieces: (task: Task, size: Size, style: PrintStyle) => readonly Piece[];
}

/** Closes the typed parts of an activity into the form that knows no types of its own. */
export function defineActivity<const Id extends string, const S extends ParameterSpecs, P, A>(
  parts: ActivityParts<Id, S, P, A>,
): Activity & { readonly id: Id } {
  const typed = (values: Values) => values as ValuesOf<S>;
  return {
    ...parts,
    ladder: parts.ladder as readonly Step<Values>[],
    words: parts.words as unknown as Activity['words'],
    read: (step, changes, style) => {
      const rung = parts.ladder[step - 1];
      if (!rung) {
        return refuse({
          code: 'out-of-range',
          at: `${parts.id} › step`,
          got: step,
          min: 1,
          max: parts.ladder.length,
        });
      }
      const values = readValues(parts.parameters, changes, rung.values, parts.id);
      if (!values.ok) return values;
      const notHere = picturesRefusal(parts.id, style);
      if (notHere) return refuse(notHere);
      const limits: Limits = (some, printed) => parts.limits(typed(some), printed);
      const all = values.value as Values;
      const refusals = withPictures(style.pictures, () =>
        refusalsWithColours(parts.id, parts.parameters, limits, all, style),
      );
      return refusals.length > 0 ? refuse(...refusals) : accept(all);
    },
    generate: (values, random, style) =>
      withPictures(style.pictures, () => parts.generate(typed(values), random, style)),
    solve: (printed) => parts.solve(parts.printed.parse(printed)),
    prove: (task) =>
      prove(parts, parts.printed.parse(task.printed), parts.answer.parse(task.answer)),
    features: (printed) => parts.features(printed as P),
    chance: (printed) => Math.min(MOST_CHANCE, parts.chance(printed as P)),
    decisions: (task) => parts.decisions?.(task.printed as P, task.answer as A) ?? [],
    room: (printed, style) => parts.room(printed as P, style && laidOutFor(style)),
    draw: (task, size, style, withAnswer) => {
      const printed = task.printed as P;
      const inked = styleForTask(printed, style, parts.hangsOnFilling?.(printed));
      return drawnFor(inked, size, (own) =>
        parts.draw(printed, size, own, ...(withAnswer ? [task.answer as A] : [])),
      );
    },
    materials: (task) => parts.materials(task.printed as P, task.answer as A),
    pieces: (task, size, style) => {
      const printed = task.printed as P;
      const inked = styleForTask(printed, style, parts.hangsOnFilling?.(printed));
      return piecesFor(
        inked,
        size,
        (own) => parts.pieces?.(printed, task.answer as A, size, own) ?? [],
      );
    },
  };
}

/** Pictures of a family's own that the sheet names and that are not known here. */
function picturesRefusal(id: string, { pictures }: PrintStyle): Refusal | undefined {
  const lacking = (pictures?.ids ?? []).filter((one) => !isOwnKnown(one));
  if (lacking.length === 0) return undefined;
  return { code: 'pictures-not-here', at: `${id} › own pictures`, got: lacking.join(', ') };
}

function prove<Id extends string, S extends ParameterSpecs, P, A>(
  parts: ActivityParts<Id, S, P, A>,
  printed: P,
  key: A,
): Proof {
  const { answers, faults } = parts.solve(printed);
  const fault = faults[0];
  if (fault !== undefined) return { proven: false, reason: 'unfit', detail: fault };
  const [only] = answers;
  if (only === undefined)
    return { proven: false, reason: 'wrong', detail: told('faults', 'no-answer') };
  if (answers.length > 1) {
    return {
      proven: false,
      reason: 'ambiguous',
      detail: told('faults', 'several-answers', { count: answers.length }),
    };
  }
  return parts.sameAnswer(only, key)
    ? { proven: true }
    : { proven: false, reason: 'wrong', detail: told('faults', 'other-key') };
}
