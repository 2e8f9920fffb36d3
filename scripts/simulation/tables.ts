// What the courses come to, as Markdown tables.
import { type Child, SKILLS } from './child.ts';
import { type Course, STOPS } from './course.ts';

/** True success that counts as well aimed. */
const ZONE = { least: 0.7, most: 0.95 } as const;

export function mainTable(policies: readonly (readonly Course[])[]): string {
  const rows = STOPS.flatMap((sheets, index) =>
    policies.map((courses) => rowOf(courses, sheets, index)),
  );
  return table(
    [
      'after',
      'policy',
      'sheets in 70–95 %',
      'too hard',
      'too easy',
      'mean error of the estimate, logits',
      'bias',
      '90 % interval holds the truth',
    ],
    rows,
  );
}

function rowOf(courses: readonly Course[], sheets: number, index: number): readonly string[] {
  const successes = courses.flatMap((course) => course.successes.slice(0, sheets));
  const stops = courses.flatMap(({ stops }) => stops[index] ?? []);
  const errors = stops.flatMap((stop) => stop.errors);
  const covered = stops.flatMap((stop) => stop.covered);
  return [
    `${sheets} sheets`,
    courses[0]?.policy ?? '',
    percent(shareOf(successes, inZone)),
    percent(shareOf(successes, (success) => success < ZONE.least)),
    percent(shareOf(successes, (success) => success > ZONE.most)),
    mean(errors.map(Math.abs)).toFixed(2),
    mean(errors).toFixed(2),
    covered.length > 0 ? percent(shareOf(covered, (each) => each)) : 'has none',
  ];
}

function inZone(success: number): boolean {
  return success >= ZONE.least && success <= ZONE.most;
}

const GROUPS: readonly (readonly [name: string, isIn: (child: Child) => boolean])[] = [
  ['all', () => true],
  ['slips at more than 12 %', ({ lapse }) => lapse > 0.12],
  ['flat slopes (mean below 0.75)', (child) => slopeOf(child) < 0.75],
  ['steep slopes (mean above 1.35)', (child) => slopeOf(child) > 1.35],
  ['able (mean above 1.5)', (child) => startOf(child) > 1.5],
  ['beginning (mean below −2)', (child) => startOf(child) < -2],
  ['uneven (skills 2.5 or more apart)', (child) => spanOf(child) >= 2.5],
  ['form changes much (sd above 0.5)', ({ moods }) => moods > 0.5],
  ['grows fast (2 logits a year or more)', ({ growth }) => growth * 365 >= 2],
];

function startOf({ skills }: Child): number {
  return mean([...skills.values()].map(({ start }) => start));
}

function slopeOf({ skills }: Child): number {
  return mean([...skills.values()].map(({ slope }) => slope));
}

function spanOf({ skills }: Child): number {
  const starts = SKILLS.map((skill) => skills.get(skill)?.start ?? 0);
  return Math.max(...starts) - Math.min(...starts);
}

/** By kinds of children: sheets in the zone for each policy over all sheets; the learner's error and coverage. */
export function groupTable(policies: readonly (readonly Course[])[]): string {
  const names = policies.map((courses) => `in 70–95 %: ${courses[0]?.policy ?? ''}`);
  const rows = GROUPS.map(([name, isIn]) => groupRow(policies, name, isIn));
  return table(
    ['children', 'how many', ...names, 'learner: mean error', 'bias', '90 % interval'],
    rows,
  );
}

function groupRow(
  policies: readonly (readonly Course[])[],
  name: string,
  isIn: (child: Child) => boolean,
): readonly string[] {
  const of = policies.map((courses) => courses.filter(({ child }) => isIn(child)));
  const zones = of.map((courses) => {
    return percent(
      shareOf(
        courses.flatMap(({ successes }) => successes),
        inZone,
      ),
    );
  });
  const ends = (of[0] ?? []).flatMap(({ stops }) => stops.at(-1) ?? []);
  const errors = ends.flatMap((stop) => stop.errors);
  const covered = ends.flatMap((stop) => stop.covered);
  return [
    name,
    String(of[0]?.length ?? 0),
    ...zones,
    mean(errors.map(Math.abs)).toFixed(2),
    mean(errors).toFixed(2),
    percent(shareOf(covered, (each) => each)),
  ];
}

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const lines = [head, head.map(() => '---'), ...rows];
  return lines.map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function shareOf<T>(values: readonly T[], isSo: (value: T) => boolean): number {
  return values.filter(isSo).length / values.length;
}

export function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}
