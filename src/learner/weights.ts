// The one table of difficulty: what each feature weighs in logits, from which source, and what is told of it.
import type { FeatureName } from '../activities/index.ts';

export interface Weight {
  /** Logits for each unit of the feature; 0 or more. */
  readonly logits: number;
  /** Where the sign and order of the weight come from. No source gives its size. */
  readonly source: string;
  /** The amount that an easiest sheet has anyway, in the feature's unit; absent: 0. Only what is above it is told. */
  readonly usual?: number;
  /** The feature in whose phrase this one is told. */
  readonly toldWith?: FeatureName;
  /** The number in the feature's phrase, of its amount; absent: none. */
  readonly number?: (amount: number) => number;
  /** Which of several phrases is said of an amount; absent: there is one. */
  readonly grade?: (amount: number) => string;
}

function handGrade(level: number): string {
  if (level >= 5) return 'slants';
  return level >= 3 ? 'draws' : 'colours';
}

/** How many things a natural logarithm stands for. */
const things = (amount: number) => Math.round(Math.exp(amount));
const thingsButOne = (amount: number) => things(amount) - 1;
const thingsMore = (amount: number) => Math.max(1, thingsButOne(amount));

const PRACTICE = 'common practice, no source';
const DUNCAN_HUMPHREYS = 'Duncan & Humphreys 1989, Psychol. Rev. 96(3) 433–458';
const TREISMAN_GELADE = 'Treisman & Gelade 1980, Cogn. Psychol. 12, 97–136';
const RUDEL_TEUBER = 'Rudel & Teuber 1963, J. Comp. Physiol. Psychol. 56, 892–898';

/**
 * Logits of a task without any feature. Chosen so that ladders begin near −2.5, where a child at 0 is right
 * nine times in ten (Rasch 1960).
 */
export const BASE_LOGITS = -4.75;

/**
 * All weights are provisional: signs and orders follow the sources, sizes are set so that the ladders run from
 * about −2.5 to +2.5 logits and each rung is harder than the one below. They are the basic parameters of a
 * linear logistic test model (Fischer 1973, Acta Psychol. 37, 359–374) and can be estimated anew from records.
 */
export const WEIGHTS: Readonly<Record<FeatureName, Weight>> = {
  compared: {
    logits: 0.9,
    usual: Math.log(6),
    source: `${TREISMAN_GELADE}: search time grows with the number of figures`,
    number: things,
  },
  answers: {
    logits: 1,
    source: PRACTICE,
    number: things,
  },
  nearMisses: {
    logits: 0.8,
    source: `${DUNCAN_HUMPHREYS}: distractors like the target are harder`,
    number: thingsButOne,
  },
  likeness: {
    logits: 1.5,
    source: `${DUNCAN_HUMPHREYS}: distractors like the target are harder`,
    grade: (amount) => (amount >= 0.4 ? 'much' : 'little'),
  },
  mixed: {
    logits: 0.4,
    usual: 0.6,
    source: `${DUNCAN_HUMPHREYS}: distractors that differ among themselves are harder`,
  },
  quantities: {
    logits: 0.5,
    source: 'Halberda & Feigenson 2008, Dev. Psychol. 44(5) 1457–1465: closer ratios are harder',
  },
  mirrored: {
    logits: 0.3,
    source: `${RUDEL_TEUBER}; Uehara 2013, Psychology 4, 736–740: left-right harder than up-down`,
  },
  oblique: {
    logits: 0.4,
    source: `${RUDEL_TEUBER}; Corballis & Zalik 1977, J. Exp. Child Psychol. 24, 516`,
  },
  conjunction: {
    logits: 0.3,
    source: `${TREISMAN_GELADE}; Gerhardstein & Rovee-Collier 2002, J. Exp. Child Psychol. 81(2) 194–215`,
    number: (amount) => Math.round(amount) + 1,
  },
  conjunctionCompared: {
    logits: 0.2,
    source: `${TREISMAN_GELADE}: search for joined features grows faster with the number of figures`,
    toldWith: 'conjunction',
  },
  idle: {
    logits: 0.4,
    source: `${DUNCAN_HUMPHREYS}: variation that says nothing adds to the differences`,
    number: Math.round,
  },
  keySize: {
    logits: 0.8,
    usual: Math.log(2),
    source: PRACTICE,
    number: things,
  },
  rule: {
    logits: 0.45,
    usual: 1,
    source:
      'Halford, Wilson & Phillips 1998, Behav. Brain Sci. 21, 803–831 (from memory): more things related at once come later',
  },
  elements: {
    logits: 0.8,
    usual: Math.log(2),
    source: PRACTICE,
    number: things,
  },
  places: {
    logits: 0.7,
    usual: Math.log(4),
    source: PRACTICE,
    number: things,
  },
  kinds: {
    logits: 0.3,
    source: PRACTICE,
    number: things,
  },
  repeats: {
    logits: 0.35,
    source: PRACTICE,
    number: things,
  },
  begun: {
    logits: 0.3,
    source: PRACTICE,
  },
  asymmetry: {
    logits: 0.7,
    source:
      'Bornstein, Ferdinandsen & Gross 1981, Dev. Psychol. 17, 82–86 (from memory): mirror patterns are taken in more easily',
  },
  levelLine: {
    logits: 0.35,
    source:
      'Bornstein, Ferdinandsen & Gross 1981, Dev. Psychol. 17, 82–86 (from memory): symmetry about an upright line is seen sooner',
  },
  apart: {
    logits: 0.4,
    source: PRACTICE,
    number: things,
  },
  disorder: {
    logits: 0.45,
    source: PRACTICE,
  },
  period: {
    logits: 0.8,
    source:
      'Rittle-Johnson et al. 2013, J. Cogn. Dev.: copying and extending come before naming the unit',
    number: things,
  },
  hidden: {
    logits: 1.5,
    source: PRACTICE,
  },
  overlaid: {
    logits: 1.5,
    source:
      'Ghent 1956, Am. J. Psychol. 69, 575–587 (from memory): overlapping outlines are seen apart later than separate ones',
  },
  turned: {
    logits: 0.6,
    source:
      'Shepard & Metzler 1971, Science 171, 701–703 (from memory): time grows with the angle, in adults',
  },
  resized: {
    logits: 0.5,
    source: PRACTICE,
  },
  crossings: {
    logits: 0.6,
    source: PRACTICE,
    number: thingsMore,
  },
  inferred: {
    logits: 0.8,
    source: PRACTICE,
    number: things,
  },
  absence: {
    logits: 0.5,
    source: `${TREISMAN_GELADE}, Table 1 (from memory): to find that something is nowhere takes about twice as long`,
  },
  memory: {
    logits: 0.9,
    source: PRACTICE,
    number: thingsMore,
  },
  hand: {
    logits: 0.15,
    usual: 1,
    source:
      'Order of copying ages in the Gesell tradition (sources differ by a year or more): circle, cross, square, triangle',
    grade: handGrade,
  },
  movements: {
    logits: 0.2,
    source: PRACTICE,
    number: things,
  },
};
