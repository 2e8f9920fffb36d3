// What Growth says, on the screen and in the printed report alike; fetched with it.
import { isolated } from '../../page/index.ts';
import type { Trend, Watch } from '../../plan/index.ts';
import type { Day } from '../../records/index.ts';
import type { CourseWords, FittingWords, GrowthView } from '../planning/cards.ts';
import { dayWriter } from '../speaking/dates.ts';
import { piecesOf } from '../speaking/pieces.ts';
import { capital, shared } from '../speaking/shared.ts';
import { spoken, type Telling } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';

type Pair = GrowthView['pairs'][number];
type Steps = Pick<FittingWords, 'step' | 'least' | 'most' | 'steps'>;
type Telt = Telling<typeof MESSAGES>;

export const words = spoken('app/growth', MESSAGES, (telling) => {
  const { say, plain, under, language } = telling;
  const written = dayWriter(language, { dateStyle: 'long' });
  const longDay = (day: Day) => say('day', { day: written(day) });
  const allSkills: Readonly<Record<Trend, string>> = under('allSkills');
  const skillTrend: Readonly<Record<Trend, string>> = under('skillTrend');
  const stepOf = ({ step, steps }: Steps) => say('stepOf', { step, steps });
  const sureOf = (steps: Steps) => sureText(telling, steps);
  const pairs = pairWords(telling);
  return {
    ...plain,
    ...pairs,
    longDay,
    title: (child: string) => say('title', { child }),
    noRecords: (child: string) => say('noRecords', { child }),
    facts: ({ sheets, days, from = '', to = '' }: GrowthView) =>
      from === to
        ? say('facts.oneDay', { sheets, days, to: written(to) })
        : say('facts', { sheets, days, from: written(from), to: written(to) }),
    allSkills: (trend: Trend) => allSkills[trend],
    skillTrend: (trend: Trend) => skillTrend[trend],
    unread: (count: number) => say('unread', { count }),
    stepOf,
    sureOf,
    skillAbout: (about: string) => say('skillAbout', { about: capital(about) }),
    fittingStep: piecesOf((controls) => say('fittingStep', controls), ['name', 'step']),
    fittingLine: (fitting: FittingWords) =>
      say('fittingLine', {
        name: capital(fitting.name),
        step: stepOf(fitting),
        sure: sureOf(fitting),
      }),
    /** A course has at least the week that it begins with. */
    course: (skill: string, { name, from, to, weeks }: CourseWords) => {
      const [first, last] = [weeks[0], weeks.at(-1)];
      return say('course', {
        skill: capital(skill),
        ...{ name, from: written(from), to: written(to) },
        first: first === undefined ? '' : say('guide', { step: first.step }),
        last: last === undefined ? '' : stepOf(last),
        sure: last === undefined ? '' : sureOf(last),
      });
    },
    measured: (name: string) => say('measured', { name }),
    guide: (step: number) => say('guide', { step }),
    asTableOf: (skill: string) => say('asTableOf', { skill }),
    tableOf: (skill: string, name: string) => say('tableOf', { skill: capital(skill), name }),
    seldom: (count: number) => say('seldom', { count }),
    watches: under('watches') satisfies Readonly<Record<Watch, string>>,
    report: { ...reportWords(telling, written), pairRow: pairs.pairRow },
  };
});

/** How sure it is which step fits. */
function sureText({ say }: Telt, { least, most, steps }: Steps): string {
  if (least === 1 && most === steps) return say('sure.unknown');
  if (least === most) return say('sure.one', { least });
  if (least === 1) return say('sure.orEasier', { most });
  if (most === steps) return say('sure.orHarder', { least });
  return say('sure.between', { least, most });
}

function pairWords({ say }: Telt) {
  const pairName = ({ pair: [one, other] }: Pair) => say('pairName', { one, other });
  const pairCounts = ({ times, opportunities }: Pair) =>
    say('pairCounts', { times, chances: opportunities });
  return {
    pairName,
    pairCounts,
    pairRow: (pair: Pair) =>
      say(pair.isConfused ? 'report.pairRow.confused' : 'report.pairRow', {
        pair: pairName(pair),
        counts: pairCounts(pair),
      }),
  };
}

function reportWords({ say, under }: Telt, longDay: (day: Day) => string) {
  return {
    ...under('report'),
    sentence: (hasNotes: boolean) =>
      piecesOf(
        (controls) => say(hasNotes ? 'report.sentence.notes' : 'report.sentence', controls),
        ['paper', 'notes'],
      ),
    notes: under('report.notes'),
    written: (day: Day) => say('report.written', { day: longDay(day) }),
    notMetOf: (skills: readonly string[]) =>
      say('report.notMetOf', { skills: capital(shared.inSeries(skills)) }),
    pairsOf: (all: number) => say('report.pairsOf', { all }),
    note: (day: Day, note: string) => say('report.note', { day: isolated(longDay(day)), note }),
    fields: [say('report.field.date'), say('report.field.signature')],
    foot: (child: string, day: Day) =>
      say('report.foot', { child: isolated(child), day: isolated(longDay(day)) }),
    pages: [1, 2].map((page) => say('report.page', { page, pages: 2 })),
    fileName: (child: string, day: Day) => `${child} ${day}`,
  };
}
