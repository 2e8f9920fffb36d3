// What of a child's growth is printed for others to read, in the words of the screen.
import type { PaperName } from '../../page/index.ts';
import type { Report, ReportPart, ReportSkill } from '../../plan/index.ts';
import type { Day } from '../../records/index.ts';
import type { GrowthView, SkillView } from '../planning/cards.ts';
import { words as planning } from '../planning/words.ts';
import { languageNow } from '../speaking/language-now.ts';
import { capital, shared } from '../speaking/shared.ts';
import { words } from './words.ts';

export interface DatedNote {
  readonly day: Day;
  readonly note: string;
}

export interface ReportAsked {
  readonly growth: GrowthView;
  readonly nickname: string;
  /** The day on which it is written. */
  readonly day: Day;
  readonly paper: PaperName;
  /** In the order of their days; none where none is to be told. */
  readonly notes: readonly DatedNote[];
}

/** As many as half a page holds, and how much of a note: common practice, no source. */
const MOST_PAIRS = 24;
const MOST_CHARACTERS = 400;

export function reportOf({ growth, nickname, day, paper, notes }: ReportAsked): Report {
  const told = words.report;
  const { skills, sheets, trend, unread } = growth;
  return {
    paper,
    language: languageNow(),
    title: words.title(nickname),
    opening: [
      sheets === 0
        ? shared.sentences([told.nothing, told.written(day)])
        : shared.sentences([words.facts(growth), told.written(day), words.allSkills(trend)]),
      ...(unread === 0 ? [] : [words.unread(unread)]),
      ...(sheets === 0 ? [] : [howToRead(skills)]),
    ],
    skills: skills.filter((skill) => skill.sheets > 0).map(skillOf),
    parts: [...notMetPart(skills), ...pairsPart(growth), ...watchPart(growth)],
    ...(notes.length === 0 ? {} : { notes: notesOf(notes) }),
    care: { heading: told.care, paragraphs: [words.care, told.careFurther] },
    remarks: { heading: told.remarks, fields: told.fields },
    foot: told.foot(nickname, day),
    pages: told.pages,
    lacking: told.lacking,
  };
}

/** What the drawings mean, where there is one. */
function howToRead(skills: readonly SkillView[]): string {
  const { howToRead, drawings } = words.report;
  const isDrawn = skills.some(({ chart }) => chart !== undefined);
  return shared.sentences(isDrawn ? [howToRead, drawings] : [howToRead]);
}

function skillOf({ skill, fitting, trend, chart }: SkillView): ReportSkill {
  const name = planning.skills[skill];
  return {
    name: capital(name),
    about: words.skillAbout(planning.skillsAbout[skill]),
    lines: [...fitting.map(words.fittingLine), words.skillTrend(trend)],
    ...(chart === undefined
      ? {}
      : {
          chart: {
            course: chart,
            alt: words.course(name, chart),
            measure: words.measured(chart.name),
            easier: words.easier,
            harder: words.harder,
            from: words.longDay(chart.from),
            to: words.longDay(chart.to),
            guides: chart.guides.map(({ step }) => words.guide(step)),
          },
        }),
  };
}

function notMetPart(skills: readonly SkillView[]): readonly ReportPart[] {
  const names = skills
    .filter(({ sheets }) => sheets === 0)
    .map(({ skill }) => planning.skills[skill]);
  if (names.length === 0) return [];
  return [{ heading: words.report.notMet, paragraphs: [words.report.notMetOf(names)] }];
}

function pairsPart({ pairs }: GrowthView): readonly ReportPart[] {
  if (pairs.length === 0) return [];
  const rows = {
    items: pairs.slice(0, MOST_PAIRS).map(words.report.pairRow),
    more: words.report.morePairs,
  };
  const of = pairs.length > MOST_PAIRS ? [words.report.pairsOf(pairs.length)] : [];
  const about = shared.sentences([words.mixedUpFacts, ...of]);
  return [{ heading: words.mixedUp, paragraphs: [about], rows }];
}

function watchPart({ watch }: GrowthView): readonly ReportPart[] {
  if (watch.length === 0) return [];
  return [{ heading: words.worthALook, paragraphs: watch.map((each) => words.watches[each]) }];
}

function notesOf(notes: readonly DatedNote[]): NonNullable<Report['notes']> {
  return {
    heading: words.report.notesHeading,
    items: [...notes].reverse().map(({ day, note }) => words.report.note(day, shortened(note))),
    more: words.report.moreNotes,
  };
}

function shortened(note: string): string {
  const characters = [...note.trim()];
  if (characters.length <= MOST_CHARACTERS) return characters.join('');
  return `${characters.slice(0, MOST_CHARACTERS).join('').trimEnd()} …`;
}
