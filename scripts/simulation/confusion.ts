// How often a confusion is seen where there is none, and where there is one.
import { type Random, randomFrom } from '../../src/base/index.ts';
import { confusionsIn, type Look, offeredByLikeness } from '../../src/learner/index.ts';
import { between, drawn, isSo } from './chances.ts';
import { percent, table } from './tables.ts';

const SHEETS = 60;
const TASKS = 4;
const LABELS = ['red', 'orange', 'yellow', 'green', 'blue', 'purple', 'brown', 'black'];
const PAIR = ['red', 'orange'];

interface Kind {
  readonly name: string;
  /** How often one of the pair is taken for the other; 0: no confusion. */
  readonly taken: number;
  /** Factor by which the child's own likeness of things is off the reckoned, at most. */
  readonly own: number;
}

const KINDS: readonly Kind[] = [
  { name: 'no confusion, errors by likeness', taken: 0, own: 1 },
  { name: 'no confusion, likeness off by up to twice', taken: 0, own: 2 },
  { name: 'no confusion, likeness off by up to four times', taken: 0, own: 4 },
  { name: 'red and orange mixed up 40 times in 100', taken: 0.4, own: 1 },
  { name: 'red and orange mixed up 60 times in 100', taken: 0.6, own: 1 },
  { name: 'red and orange mixed up 80 times in 100', taken: 0.8, own: 1 },
];

export function confusionTable(children: number, seed: number): string {
  const rows = KINDS.map((kind) => {
    const random = randomFrom(seed);
    const shown = Array.from({ length: children }, () => shownTo(random, kind));
    const share = (isSo: (pairs: readonly string[]) => boolean) =>
      percent(shown.filter(isSo).length / children);
    const isRight = (pair: string) => pair === 'orange/red' && kind.taken > 0;
    return [
      kind.name,
      share((pairs) => pairs.some(isRight)),
      share((pairs) => pairs.some((pair) => !isRight(pair))),
    ];
  });
  return table([`over ${SHEETS} sheets`, 'the pair is shown', 'another pair is shown'], rows);
}

/** The pairs that are ever shown when one looks after every fifth sheet. */
function shownTo(random: Random, { taken, own }: Kind): readonly string[] {
  const errors = between(random, 0.05, 0.4);
  const bias = new Map(
    LABELS.flatMap((one) => LABELS.map((other) => [one + other, own ** between(random, -1, 1)])),
  );
  const looks: Look[] = [];
  const shown = new Set<string>();
  for (let sheet = 1; sheet <= SHEETS; sheet++) {
    for (let task = 0; task < TASKS; task++) looks.push(lookOf(random, errors, taken, bias));
    if (sheet % 5 !== 0) continue;
    for (const { pair, isConfused } of confusionsIn(looks))
      if (isConfused) shown.add(pair.join('/'));
  }
  return [...shown];
}

function lookOf(
  random: Random,
  errors: number,
  taken: number,
  bias: ReadonlyMap<string, number>,
): Look {
  const [right = '', ...wrong] = random.sample(LABELS, 4);
  const likeness = wrong.map((label) => [label, likenessOf(right, label)] as const);
  const offered = offeredByLikeness(Object.fromEntries(likeness));
  const other = PAIR.find((label) => label !== right) ?? '';
  const isPair = PAIR.includes(right) && wrong.includes(other);
  if (isPair && isSo(random, taken)) return { right, offered, chosen: other };
  if (!isSo(random, errors)) return { right, offered };
  const pulls = offered.map(({ label, share }) => share * (bias.get(right + label) ?? 1));
  return { right, offered, chosen: wrong[drawn(random, pulls)] ?? '' };
}

/** Neighbours in the ring of `LABELS` are most alike. */
function likenessOf(one: string, other: string): number {
  const gap = Math.abs(LABELS.indexOf(one) - LABELS.indexOf(other));
  return Math.exp(-Math.min(gap, LABELS.length - gap) / 1.5);
}
