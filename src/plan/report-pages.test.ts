// The pages of a report: one or two of them, nothing outside the margins, nothing that the font cannot print.
import { describe, expect, test } from 'vitest';
import { placedIn } from '../../tests/scene-bounds.ts';
import { GLYPHS } from '../figures/index.ts';
import { HOME_PAPERS, type Page, type PaperName, printArea, WRITE_IN } from '../page/index.ts';
import type { CourseChart } from './growth-chart.ts';
import type { Report, ReportSkill } from './report.ts';
import { reportPages } from './report-pages.ts';

const COURSE: CourseChart = {
  from: '2026-09-07',
  to: '2026-10-25',
  points: [0, 0.4, 1].map((across) => ({ across, mean: 0.5, least: 0, most: 1 })),
  activity: 'odd-one-out',
  guides: [
    { step: 3, up: 0.15 },
    { step: 13, up: 0.85 },
  ],
  weeks: [],
};

const SKILL: ReportSkill = {
  name: 'Hidden and in parts',
  about: 'Finding what lies under lines, is missing, or shows its outline only.',
  lines: Array.from({ length: 4 }, () => 'Odd one out: step 6 of 15, probably between 4 and 8.'),
  chart: {
    course: COURSE,
    alt: 'Hidden and in parts, in steps of odd one out.',
    measure: 'The marks are steps of “odd one out”.',
    easier: 'easier',
    harder: 'harder',
    from: '7 September 2026',
    to: '25 October 2026',
    guides: ['step 3', 'step 13'],
  },
};

interface Asked {
  readonly nickname?: string;
  readonly skills?: number;
  readonly pairs?: number;
  readonly notes?: readonly string[];
  readonly paper?: PaperName;
}

function reportOf({
  nickname = 'Fern',
  skills = 6,
  pairs = 0,
  notes,
  paper = 'A4',
}: Asked): Report {
  return {
    paper,
    language: 'en',
    title: `How ${nickname} is getting on`,
    opening: ['48 sheets on 24 days.', 'What the drawings mean. '.repeat(6).trim()],
    skills: Array.from({ length: skills }, () => SKILL),
    parts: [
      {
        heading: 'Mixed up',
        paragraphs: ['How often.'],
        rows: {
          items: Array.from({ length: pairs }, () => 'red with orange: 5 times of 12 chances'),
          more: 'No room for further pairs.',
        },
      },
      { heading: 'Worth a look', paragraphs: ['A calm line. '.repeat(20).trim()] },
    ],
    ...(notes
      ? { notes: { heading: 'Notes', items: notes, more: 'No room for further notes.' } }
      : {}),
    care: { heading: 'What this is not', paragraphs: ['It is no test. '.repeat(20).trim()] },
    remarks: { heading: 'Remarks', fields: ['Date', 'Signature'] },
    foot: `${nickname} · 25 October 2026`,
    pages: ['1 of 2', '2 of 2'],
    lacking: 'Letters are missing.',
  };
}

const pagesOf = (asked: Asked): readonly Page[] => [...reportPages(reportOf(asked)).pages];

function textsOf(pages: readonly Page[]): readonly string[] {
  return pages.flatMap(({ nodes }) =>
    nodes
      .flatMap((node) => placedIn(node))
      .flatMap(({ node }) => (node.kind === 'text' ? [node.text] : [])),
  );
}

/** What lies outside the margins, in words. */
function outsideMargins(page: Page, paper: PaperName): readonly string[] {
  const { left, top, width, height } = printArea(paper, 'portrait');
  return page.nodes
    .flatMap((node) => placedIn(node))
    .filter(
      ({ bounds }) =>
        bounds.left < left - 0.02 ||
        bounds.top < top - 0.02 ||
        bounds.right > left + width + 0.02 ||
        bounds.bottom > top + height + 0.02,
    )
    .map(({ roles, bounds }) => `${roles.join(' › ')} ${JSON.stringify(bounds)}`);
}

const LONG_NOTE = 'Laughed at the snail and would not stop. '.repeat(10).trim();
const CASES: readonly (readonly [string, Asked])[] = [
  ['no skill', { skills: 0 }],
  ['one skill', { skills: 1 }],
  ['six skills', {}],
  ['six skills and 40 pairs', { pairs: 40 }],
  ['six skills, 40 pairs and 300 long notes', { pairs: 40, notes: Array(300).fill(LONG_NOTE) }],
  ['a name without a space', { nickname: 'W'.repeat(40), pairs: 40 }],
  ['a name in letters that the font lacks', { nickname: 'Папороть 🌿' }],
];

describe.each(HOME_PAPERS)('a report on %s', (paper) => {
  test.each(CASES)('of %s takes one or two pages and stays within their margins', (_, asked) => {
    const pages = pagesOf({ ...asked, paper });
    expect(pages.length).toBeGreaterThan(0);
    expect(pages.length).toBeLessThanOrEqual(2);
    expect(pages.flatMap((page) => outsideMargins(page, paper))).toEqual([]);
  });

  test.each(CASES)('of %s ends with room for a remark', (_, asked) => {
    const texts = textsOf(pagesOf({ ...asked, paper }));
    for (const words of ['Remarks', 'Date', 'Signature']) expect(texts).toContain(words);
  });
});

describe('a report', () => {
  test('of two pages numbers them, and one page alone has no number', () => {
    const long = pagesOf({ pairs: 40, notes: Array(300).fill(LONG_NOTE) });
    expect(long.map((page) => textsOf([page]).filter((text) => / of 2$/.test(text)))).toEqual([
      ['1 of 2'],
      ['2 of 2'],
    ]);
    expect(textsOf(pagesOf({ skills: 1 })).filter((text) => / of 2$/.test(text))).toEqual([]);
  });

  test('of one skill is one page', () => {
    expect(pagesOf({ skills: 1 })).toHaveLength(1);
  });

  test('tells the newest notes, and says so where there is no room for all', () => {
    const notes = Array.from({ length: 60 }, (_, number) => `Note ${number}.`);
    const texts = textsOf(pagesOf({ notes }));
    expect(texts).toContain('Note 0.');
    expect(texts).not.toContain('Note 59.');
    expect(texts).toContain('No room for further notes.');
    expect(textsOf(pagesOf({ notes: notes.slice(0, 3) }))).not.toContain(
      'No room for further notes.',
    );
  });

  test.each(['Папороть', '蕨', 'Fern 蕨', '🌿'])(
    'of %s prints no letter that the font lacks',
    (nickname) => {
      const texts = textsOf(pagesOf({ nickname }));
      const missing = texts.flatMap((text) => [...text].filter((each) => !GLYPHS.has(each)));
      expect(missing).toEqual([]);
    },
  );

  test('says that letters are missing only where some are, with a line to write them on', () => {
    expect(textsOf(pagesOf({}))).not.toContain('Letters are missing.');
    const texts = textsOf(pagesOf({ nickname: '蕨' }));
    expect(texts).toContain('Letters are missing.');
    expect(texts[0]).toContain(WRITE_IN);
  });

  test('names its charts for those who cannot see them', () => {
    const [page] = pagesOf({ skills: 1 });
    expect(JSON.stringify(page)).toContain('Hidden and in parts, in steps of odd one out.');
  });
});
