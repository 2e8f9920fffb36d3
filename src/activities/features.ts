// The closed list of features that make a task easy or hard, each with its unit; every activity measures its own.

/**
 * What each feature counts. Numbers of things are taken as natural logarithms, because one more of few is
 * felt more than one more of many; 0 is always the easiest there is. Each is measured from what is printed.
 */
export const FEATURES = {
  compared: 'natural logarithm of how many figures must be looked at to be sure',
  answers: 'natural logarithm of how many things have to be found',
  nearMisses: 'natural logarithm of 1 + how many wrong figures break the rule in one way only',
  likeness: '0 to 1: mean likeness of each figure to the one it is most easily taken for',
  mixed: '0 to 1: how much the wrong figures differ among themselves, by kind and by likeness',
  quantities:
    '0 to 1: mean of smaller over larger for each quantity and the one nearest to it, where quantities differ',
  mirrored: '0 to 1: share of figures that must be told from their left-right mirror image',
  oblique: '0 to 1: share of figures or lines that lie at a slant',
  conjunction: 'how many attributes must be minded together, beyond the first',
  conjunctionCompared: '`conjunction` times `compared`',
  idle: 'how many attributes change and say nothing',
  keySize: 'natural logarithm of how many entries the key has',
  rule: 'how many things the rule relates, beyond a figure and its equal',
  elements: 'natural logarithm of how many elements a pattern has',
  places: 'natural logarithm of how many places an element can go to',
  kinds: 'natural logarithm of how many different elements a pattern has',
  repeats: 'natural logarithm of how many times over the same is to be made',
  begun: '0 to 1: share of the boxes that are begun, so that what is missing must be found',
  asymmetry:
    '0 to 1: no symmetry 1, turns into itself without a mirror line 0.5, has a mirror line 0',
  levelLine: '0 to 1: share of the mirror lines that lie level',
  apart: 'natural logarithm of how many separate pieces a pattern falls into',
  disorder: '0 to 1: figures in rows 0, strewn 1',
  period: 'natural logarithm of the length of the unit that repeats',
  hidden: '0 to 1: share of the outlines that cannot be seen',
  overlaid: '0 to 1: share of the outlines that lies inside other outlines, all lines showing',
  turned: 'mean turn between a figure and its match, in quarter turns, 0 to 2',
  resized: 'natural logarithm of the ratio of lengths of a figure and its match',
  crossings: 'natural logarithm of 1 + how many lines cross',
  inferred: 'natural logarithm of how many conclusions follow one upon the other',
  absence: '0 or 1: whether the child must make sure that something is nowhere',
  memory: 'natural logarithm of 1 + how many things must be kept in mind out of sight',
  hand: 'level of the hardest movement that the response asks of the hand, 0 to 7',
  movements: 'natural logarithm of how many different responses the hand must keep apart',
} as const;

export type FeatureName = keyof typeof FEATURES;

export const FEATURE_NAMES = Object.keys(FEATURES) as readonly FeatureName[];

/** The features of one printed task; those that it does not have are absent and count 0. */
export type Features = Readonly<Partial<Record<FeatureName, number>>>;
