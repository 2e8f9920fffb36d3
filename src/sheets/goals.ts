// The goals of published curricula that a sheet serves. Which sheet serves which goal is our own reading.
import { type ActivityId, activityOf, type Skill } from '../activities/index.ts';
import { type Hand, handsOf, TOPICS, type Topic, topicsOf } from './goal-traits.ts';
import type { SheetSpec } from './sheet-spec.ts';
import { valuesOf } from './sheet-values.ts';

/**
 * Head Start Early Learning Outcomes Framework 2015 (United States, ages 3 to 5); Common Core State Standards for
 * Mathematics, kindergarten (United States); Early Years Foundation Stage, early learning goals since 2021 (England);
 * National Curriculum Framework for the Foundational Stage 2022 (India, ages 3 to 8); Te Whariki 1996 and 2017 (New Zealand).
 */
export const FRAMEWORKS = ['head-start', 'common-core', 'eyfs', 'ncf-fs', 'te-whariki'] as const;
export type Framework = (typeof FRAMEWORKS)[number];

/** Sheets that have one of each that is named; what is not named does not matter. */
interface Serving {
  readonly activities?: readonly ActivityId[];
  readonly skills?: readonly Skill[];
  readonly topics?: readonly Topic[];
  readonly hands?: readonly Hand[];
}

interface Goal {
  readonly framework: Framework;
  /** As published; no two curricula share one. */
  readonly id: string;
  /** A sheet serves the goal if any of these holds. */
  readonly servedBy: readonly Serving[];
}

const EVERY_SHEET: readonly Serving[] = [{}];
const BY_HAND: readonly Serving[] = [{ hands: ['marks', 'cuts'] }];
const OF_QUANTITIES: readonly Serving[] = [{ topics: ['quantities'] }];
const OF_SHAPES: readonly Serving[] = [{ topics: ['shapes'] }];
const OF_PATTERNS: readonly Serving[] = [
  { activities: ['copy-pattern', 'continue-row', 'missing-part'] },
];
const ALL_BUT_QUANTITIES = TOPICS.filter((topic) => topic !== 'quantities');

/**
 * Identifiers are the published ones; what each means is paraphrased in the words of the page. Where no skill, content
 * or response tells what the goal asks for, activities are named. Sources, and which of it is from memory:
 * docs/goals.md. In England no goal has been about shapes or repeating patterns since 2021.
 */
export const GOALS = [
  { framework: 'head-start', id: 'P-ATL 6', servedBy: EVERY_SHEET },
  { framework: 'head-start', id: 'P-ATL 7', servedBy: EVERY_SHEET },
  { framework: 'head-start', id: 'P-ATL 8', servedBy: [{ skills: ['memory'] }] },
  {
    framework: 'head-start',
    id: 'P-ATL 9',
    servedBy: [{ skills: ['rules'], topics: ['several'] }, { activities: ['crossing-table'] }],
  },
  { framework: 'head-start', id: 'P-MATH 1-5', servedBy: OF_QUANTITIES },
  { framework: 'head-start', id: 'P-MATH 7', servedBy: OF_PATTERNS },
  {
    framework: 'head-start',
    id: 'P-MATH 8',
    servedBy: [{ topics: ['sizes'] }, { activities: ['size-order'], topics: ALL_BUT_QUANTITIES }],
  },
  { framework: 'head-start', id: 'P-MATH 9', servedBy: OF_SHAPES },
  {
    framework: 'head-start',
    id: 'P-MATH 10',
    servedBy: [{ topics: ['directions'] }, { activities: ['copy-pattern', 'mirror-half'] }],
  },
  { framework: 'head-start', id: 'P-PMP 3', servedBy: BY_HAND },
  {
    framework: 'head-start',
    id: 'P-SCI 3',
    servedBy: [
      { skills: ['telling-apart'] },
      { activities: ['in-every-box', 'by-key', 'crossing-table'] },
    ],
  },
  { framework: 'common-core', id: 'K.CC.C.6', servedBy: OF_QUANTITIES },
  {
    framework: 'common-core',
    id: 'K.MD.B.3',
    servedBy: [{ activities: ['by-key', 'crossing-table'] }],
  },
  {
    framework: 'common-core',
    id: 'K.G.A.2',
    servedBy: [{ activities: ['turned-shapes'], topics: ['shapes'] }],
  },
  {
    framework: 'common-core',
    id: 'K.G.B.4',
    servedBy: [{ skills: ['telling-apart', 'parts', 'turns'], topics: ['shapes'] }],
  },
  {
    framework: 'common-core',
    id: 'K.G.B.5',
    servedBy: [{ topics: ['shapes'], hands: ['draws-figures'] }],
  },
  { framework: 'eyfs', id: 'ELG Number', servedBy: OF_QUANTITIES },
  {
    framework: 'eyfs',
    id: 'ELG Numerical Patterns',
    servedBy: [{ skills: ['telling-apart', 'patterns'], topics: ['quantities'] }],
  },
  { framework: 'eyfs', id: 'ELG Fine Motor Skills', servedBy: BY_HAND },
  { framework: 'ncf-fs', id: 'C-2.1', servedBy: [{ topics: ['colours', 'shapes'] }] },
  { framework: 'ncf-fs', id: 'C-2.2', servedBy: [{ skills: ['memory'] }] },
  { framework: 'ncf-fs', id: 'C-3.3', servedBy: BY_HAND },
  {
    framework: 'ncf-fs',
    id: 'C-7.1',
    servedBy: [{ activities: ['odd-one-out', 'in-every-box', 'crossing-table'] }],
  },
  {
    framework: 'ncf-fs',
    id: 'C-8.1',
    servedBy: [{ activities: ['by-key'], topics: ['several'] }, { activities: ['crossing-table'] }],
  },
  { framework: 'ncf-fs', id: 'C-8.2', servedBy: OF_PATTERNS },
  { framework: 'ncf-fs', id: 'C-8.8', servedBy: OF_SHAPES },
  { framework: 'ncf-fs', id: 'CG-13', servedBy: EVERY_SHEET },
  { framework: 'te-whariki', id: 'Exploration', servedBy: EVERY_SHEET },
] as const satisfies readonly Goal[];

export type GoalId = (typeof GOALS)[number]['id'];

/** What tells which goals a sheet serves. */
export type GoalSpec = Pick<SheetSpec, 'activity' | 'step' | 'values' | 'print'>;

/** The goals that a sheet serves, of all curricula, in the order of the table. */
export function goalsOf(spec: GoalSpec): readonly GoalId[] {
  const values = valuesOf(spec);
  if (!values.ok) return [];
  const traits: Traits = {
    activities: [spec.activity],
    skills: [activityOf(spec.activity).skill],
    topics: topicsOf(String(values.value.content)),
    hands: handsOf(String(values.value.response)),
  };
  return GOALS.filter(({ servedBy }: Goal) =>
    servedBy.some((serving) => isServed(serving, traits)),
  ).map(({ id }) => id);
}

type Traits = Required<Serving>;

function isServed({ activities, skills, topics, hands }: Serving, traits: Traits): boolean {
  return (
    meets(activities, traits.activities) &&
    meets(skills, traits.skills) &&
    meets(topics, traits.topics) &&
    meets(hands, traits.hands)
  );
}

function meets<T>(wanted: readonly T[] | undefined, there: readonly T[]): boolean {
  return wanted === undefined || there.some((each) => wanted.includes(each));
}
