// Four invented children and what they can truly do; nobody in particular, and from nobody's records.
import type { Skill } from '../../src/activities/index.ts';
import type { DemoChild } from '../../src/plan/demo/rows.ts';

/** What a child can do at a skill: logits at first and what it gains in a week. */
interface TrueAbility {
  readonly start: number;
  readonly weekly: number;
}

export interface Invented {
  readonly facts: Omit<DemoChild, 'sheets' | 'plans'>;
  readonly seed: number;
  /** Weeks of records before the current one. */
  readonly weeks: number;
  /** Days of a week with sheets, 0 Monday to 4 Friday. */
  readonly weekdays: readonly number[];
  /** Minutes that a day's sheets are planned for. */
  readonly minutes: number;
  readonly usual: TrueAbility;
  /** Skills that are not as usual. */
  readonly apart?: Partial<Readonly<Record<Skill, TrueAbility>>>;
  /** Probability of a slip at what is easy. */
  readonly lapse: number;
  /** How much longer things take than reckoned. */
  readonly pace: number;
  /** From which share of the adult's stock of notes on its own are taken, 0 to 1, so that children share few. */
  readonly notesFrom: number;
  readonly mixesUp?: MixUp;
}

export interface MixUp {
  /** What the two are called beside each other, in the order of the alphabet. */
  readonly pair: readonly [string, string];
  /** How often one is taken for the other where both are there. */
  readonly taken: number;
  /** From this week on (0: the first) the adult adds a sheet in which both are found, once a week. */
  readonly askedFrom: number;
}

export const CAST: readonly Invented[] = [
  {
    facts: {
      nickname: 'Wren',
      bornMonths: 49,
      writingHand: 'right',
      languages: ['en'],
      deeds: ['point', 'sticker', 'colour-in', 'ring', 'join', 'cut', 'sign-plus'],
    },
    seed: 5,
    weeks: 13,
    weekdays: [0, 2, 4],
    minutes: 8,
    usual: { start: -2.4, weekly: 0.34 },
    apart: { patterns: { start: -1.8, weekly: 0.38 }, memory: { start: -2, weekly: 0.26 } },
    lapse: 0.03,
    pace: 0.85,
    notesFrom: 0,
  },
  {
    facts: { nickname: 'Alder', bornMonths: 53, writingHand: 'left', languages: ['en', 'de'] },
    seed: 13,
    weeks: 13,
    weekdays: [0, 1, 3],
    minutes: 8,
    usual: { start: -0.9, weekly: 0.07 },
    apart: { 'telling-apart': { start: -0.1, weekly: 0.1 }, parts: { start: -0.5, weekly: 0.08 } },
    lapse: 0.04,
    pace: 1,
    notesFrom: 0.3,
    mixesUp: { pair: ['orange', 'red'], taken: 0.7, askedFrom: 1 },
  },
  {
    facts: { nickname: 'Moss', bornMonths: 50, writingHand: 'right' },
    seed: 12,
    weeks: 13,
    weekdays: [1, 4],
    minutes: 9,
    usual: { start: -0.5, weekly: 0.03 },
    apart: { turns: { start: -2.3, weekly: 0 } },
    lapse: 0.05,
    pace: 1.3,
    notesFrom: 0.6,
  },
  {
    facts: { nickname: 'Clover', bornMonths: 39, languages: ['en'] },
    seed: 29,
    weeks: 2,
    weekdays: [1, 2, 3],
    minutes: 6,
    usual: { start: -1.3, weekly: 0.05 },
    lapse: 0.05,
    pace: 1.1,
    notesFrom: 0.9,
  },
];
