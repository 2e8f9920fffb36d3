// English messages of how hard a task is and why. {count} is a number, {number} the same as a word.

export const MESSAGES = {
  'level.5': 'Very hard',
  'level.4': 'Hard',
  'level.3': 'Middling',
  'level.2': 'Easy',
  'level.1': 'Very easy',
  nothing: '{level}. Nothing makes it harder than a first sheet.',
  'because.1': '{level}. What makes it harder than a first sheet: {first}.',
  'because.2': '{level}. What makes it harder than a first sheet: {first} and {second}.',
  'because.3': '{level}. What makes it harder than a first sheet: {first}, {second}, and {third}.',
  compared:
    '{count, plural, one {there is {number} figure to compare} other {there are {number} figures to compare}}',
  answers:
    '{count, plural, one {{number} answer has to be found} other {{number} answers have to be found}}',
  nearMisses:
    '{count, plural, one {{number} figure is nearly right} other {{number} figures are nearly right}}',
  likeness:
    '{grade, select, much {the figures are easily taken for each other} other {some figures look like each other}}',
  mixed: 'the wrong figures are of many kinds',
  quantities: 'quantities have to be told apart',
  mirrored: 'left and right have to be told apart',
  oblique: 'some things lie at a slant',
  conjunction:
    '{count, plural, one {{number} thing matters} other {{number} things matter at once}}',
  conjunctionCompared: 'every figure must be checked for two things',
  idle: '{count, plural, one {{number} thing changes that must be left out of mind} other {{number} things change that must be left out of mind}}',
  keySize: '{count, plural, one {the key has {number} entry} other {the key has {number} entries}}',
  rule: 'the rule brings several things together',
  elements:
    '{count, plural, one {the pattern has {number} part} other {the pattern has {number} parts}}',
  places:
    '{count, plural, one {each part can go to {number} place} other {each part can go to {number} places}}',
  kinds:
    '{count, plural, one {the pattern is made of {number} kind of parts} other {the pattern is made of {number} kinds of parts}}',
  repeats:
    '{count, plural, one {it is to be made {number} time} other {it is to be made {number} times}}',
  begun: 'what is missing has to be found first',
  asymmetry: 'the pattern has no symmetry to hold on to',
  levelLine: 'the mirror line lies level',
  apart:
    '{count, plural, one {the pattern falls into {number} piece} other {the pattern falls into {number} pieces}}',
  disorder: 'the figures do not stand in rows',
  period: 'the part that repeats is {number} long',
  hidden: 'much of the outlines cannot be seen',
  overlaid: 'the outlines lie over one another',
  turned: 'the match is turned',
  resized: 'the match has another size',
  crossings:
    '{count, plural, one {the lines cross {number} time} other {the lines cross {number} times}}',
  inferred:
    '{count, plural, one {{number} thought is needed} other {{number} thoughts follow one another}}',
  absence: 'something may be nowhere',
  memory:
    '{count, plural, one {{number} thing has to be kept in mind} other {{number} things have to be kept in mind}}',
  hand: '{grade, select, slants {the hand has slanted or cornered marks to draw} draws {the hand has to draw} other {the hand has to colour in or draw lines}}',
  movements:
    '{count, plural, one {the hand has {number} thing to do} other {the hand has {number} different things to do}}',
} as const;
