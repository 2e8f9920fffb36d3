// The one table of difficulty: what each feature weighs in logits, from which source, and how it is said.
import type { FeatureName } from '../activities/index.ts';
import { counted, numberWord } from '../activities/index.ts';

export interface Weight {
  /** Logits for each unit of the feature; 0 or more. */
  readonly logits: number;
  /** Where the sign and order of the weight come from. No source gives its size. */
  readonly source: string;
  /** The amount that an easiest sheet has anyway, in the feature's unit; absent: 0. Only what is above it is told. */
  readonly usual?: number;
  /** The feature in whose phrase this one is told. */
  readonly toldWith?: FeatureName;
  /** Why a task is hard, in English, told of an amount of the feature in its unit. */
  readonly phrase: (amount: number) => string;
}

function handPhrase(level: number): string {
  if (level >= 5) return 'the hand has slanted or cornered marks to draw';
  return level >= 3 ? 'the hand has to draw' : 'the hand has to colour in or draw lines';
}

/** How many things a natural logarithm stands for. */
const things = (amount: number) => Math.round(Math.exp(amount));

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
    phrase: (amount) => `there are ${counted(things(amount), 'figure', 'figures')} to compare`,
  },
  answers: {
    logits: 1,
    source: PRACTICE,
    phrase: (amount) => `${counted(things(amount), 'answer has', 'answers have')} to be found`,
  },
  nearMisses: {
    logits: 0.8,
    source: `${DUNCAN_HUMPHREYS}: distractors like the target are harder`,
    phrase: (amount) => `${counted(things(amount) - 1, 'figure is', 'figures are')} nearly right`,
  },
  likeness: {
    logits: 1.5,
    source: `${DUNCAN_HUMPHREYS}: distractors like the target are harder`,
    phrase: (amount) =>
      amount >= 0.4
        ? 'the figures are easily taken for each other'
        : 'some figures look like each other',
  },
  mixed: {
    logits: 0.4,
    usual: 0.6,
    source: `${DUNCAN_HUMPHREYS}: distractors that differ among themselves are harder`,
    phrase: () => 'the wrong figures are of many kinds',
  },
  quantities: {
    logits: 0.5,
    source: 'Halberda & Feigenson 2008, Dev. Psychol. 44(5) 1457–1465: closer ratios are harder',
    phrase: () => 'quantities have to be told apart',
  },
  mirrored: {
    logits: 0.3,
    source: `${RUDEL_TEUBER}; Uehara 2013, Psychology 4, 736–740: left-right harder than up-down`,
    phrase: () => 'left and right have to be told apart',
  },
  oblique: {
    logits: 0.4,
    source: `${RUDEL_TEUBER}; Corballis & Zalik 1977, J. Exp. Child Psychol. 24, 516`,
    phrase: () => 'some things lie at a slant',
  },
  conjunction: {
    logits: 0.3,
    source: `${TREISMAN_GELADE}; Gerhardstein & Rovee-Collier 2002, J. Exp. Child Psychol. 81(2) 194–215`,
    phrase: (amount) => `${numberWord(Math.round(amount) + 1)} things matter at once`,
  },
  conjunctionCompared: {
    logits: 0.2,
    source: `${TREISMAN_GELADE}: search for joined features grows faster with the number of figures`,
    toldWith: 'conjunction',
    phrase: () => 'every figure must be checked for two things',
  },
  idle: {
    logits: 0.4,
    source: `${DUNCAN_HUMPHREYS}: variation that says nothing adds to the differences`,
    phrase: (amount) =>
      `${counted(Math.round(amount), 'thing changes', 'things change')} that must be left out of mind`,
  },
  keySize: {
    logits: 0.8,
    usual: Math.log(2),
    source: PRACTICE,
    phrase: (amount) => `the key has ${counted(things(amount), 'entry', 'entries')}`,
  },
  rule: {
    logits: 0.45,
    usual: 1,
    source:
      'Halford, Wilson & Phillips 1998, Behav. Brain Sci. 21, 803–831 (from memory): more things related at once come later',
    phrase: () => 'the rule brings several things together',
  },
  elements: {
    logits: 0.8,
    usual: Math.log(2),
    source: PRACTICE,
    phrase: (amount) => `the pattern has ${counted(things(amount), 'part', 'parts')}`,
  },
  places: {
    logits: 0.7,
    usual: Math.log(4),
    source: PRACTICE,
    phrase: (amount) => `each part can go to ${counted(things(amount), 'place', 'places')}`,
  },
  kinds: {
    logits: 0.3,
    source: PRACTICE,
    phrase: (amount) =>
      `the pattern is made of ${counted(things(amount), 'kind', 'kinds')} of parts`,
  },
  repeats: {
    logits: 0.35,
    source: PRACTICE,
    phrase: (amount) => `it is to be made ${counted(things(amount), 'time', 'times')}`,
  },
  begun: {
    logits: 0.3,
    source: PRACTICE,
    phrase: () => 'what is missing has to be found first',
  },
  asymmetry: {
    logits: 0.7,
    source:
      'Bornstein, Ferdinandsen & Gross 1981, Dev. Psychol. 17, 82–86 (from memory): mirror patterns are taken in more easily',
    phrase: () => 'the pattern has no symmetry to hold on to',
  },
  levelLine: {
    logits: 0.35,
    source:
      'Bornstein, Ferdinandsen & Gross 1981, Dev. Psychol. 17, 82–86 (from memory): symmetry about an upright line is seen sooner',
    phrase: () => 'the mirror line lies level',
  },
  apart: {
    logits: 0.4,
    source: PRACTICE,
    phrase: (amount) => `the pattern falls into ${counted(things(amount), 'piece', 'pieces')}`,
  },
  disorder: {
    logits: 0.45,
    source: PRACTICE,
    phrase: () => 'the figures do not stand in rows',
  },
  period: {
    logits: 0.8,
    source:
      'Rittle-Johnson et al. 2013, J. Cogn. Dev.: copying and extending come before naming the unit',
    phrase: (amount) => `the part that repeats is ${numberWord(things(amount))} long`,
  },
  hidden: {
    logits: 1.5,
    source: PRACTICE,
    phrase: () => 'much of the outlines cannot be seen',
  },
  overlaid: {
    logits: 1.5,
    source:
      'Ghent 1956, Am. J. Psychol. 69, 575–587 (from memory): overlapping outlines are seen apart later than separate ones',
    phrase: () => 'the outlines lie over one another',
  },
  turned: {
    logits: 0.6,
    source:
      'Shepard & Metzler 1971, Science 171, 701–703 (from memory): time grows with the angle, in adults',
    phrase: () => 'the match is turned',
  },
  resized: {
    logits: 0.5,
    source: PRACTICE,
    phrase: () => 'the match has another size',
  },
  crossings: {
    logits: 0.6,
    source: PRACTICE,
    phrase: (amount) =>
      `the lines cross ${counted(Math.max(1, things(amount) - 1), 'time', 'times')}`,
  },
  inferred: {
    logits: 0.8,
    source: PRACTICE,
    phrase: (amount) => `${counted(things(amount), 'thought', 'thoughts')} follow one another`,
  },
  absence: {
    logits: 0.5,
    source: `${TREISMAN_GELADE}, Table 1 (from memory): to find that something is nowhere takes about twice as long`,
    phrase: () => 'something may be nowhere',
  },
  memory: {
    logits: 0.9,
    source: PRACTICE,
    phrase: (amount) =>
      `${counted(Math.max(1, things(amount) - 1), 'thing has', 'things have')} to be kept in mind`,
  },
  hand: {
    logits: 0.15,
    usual: 1,
    source:
      'Order of copying ages in the Gesell tradition (sources differ by a year or more): circle, cross, square, triangle',
    phrase: handPhrase,
  },
  movements: {
    logits: 0.2,
    source: PRACTICE,
    phrase: (amount) => `the hand has ${numberWord(things(amount))} different things to do`,
  },
};
