// What a report says, and what it never says.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf, SKILLS } from '../../activities/index.ts';
import { type CourseChart, reportPages, type Trend, type Watch } from '../../plan/index.ts';
import type { GrowthView, SkillView } from '../planning/cards.ts';
import { speakIn } from '../speaking/language-now.ts';
import { reportOf } from './report-of.ts';
import { words } from './words.ts';

const COURSE: CourseChart = {
  from: '2026-09-07',
  to: '2026-10-25',
  points: [0, 1].map((across) => ({ across, mean: 0.5, least: 0.1, most: 0.9 })),
  activity: 'odd-one-out',
  guides: [{ step: 3, up: 0.5 }],
  weeks: [{ day: '2026-10-25', sheets: 8, step: 3, least: 2, most: 5, steps: 13 }],
};

const TRENDS: readonly Trend[] = ['unknown', 'unclear', 'rising', 'falling'];
const WATCHES: readonly Watch[] = ['colours', 'pair', 'falling'];

/** Every activity given, the trends in turn. */
const SKILL_VIEWS: readonly SkillView[] = SKILLS.map((skill, place) => ({
  skill,
  sheets: 8,
  course: [],
  chart: { ...COURSE, name: 'odd one out' },
  fitting: ACTIVITY_IDS.filter((id) => activityOf(id).skill === skill).map((id) => ({
    name: activityOf(id).words.en.name,
    step: 13,
    least: 10,
    most: 17,
    steps: 18,
  })),
  trend: TRENDS[place % TRENDS.length] ?? 'unknown',
  hasFallen: false,
}));

const FULL: GrowthView = {
  from: '2026-09-07',
  to: '2026-10-23',
  sheets: 48,
  days: 24,
  unread: 2,
  skills: SKILL_VIEWS,
  trend: 'rising',
  pairs: Array.from({ length: 40 }, (_, place) => ({
    pair: ['smaller green triangle', `bigger green triangle ${place}`] as const,
    times: 40 - place,
    opportunities: 60,
    telling: 9,
    evidence: 40 - place,
    isConfused: place < 5,
  })),
  watch: WATCHES,
};

const NOTES = Array.from({ length: 30 }, (_, place) => ({
  day: `2026-09-${String(place + 1).padStart(2, '0')}`,
  note: `Secret ${place}. ${'More of it. '.repeat(100)}`,
}));

const told = (growth: GrowthView, notes = NOTES.slice(0, 0)) =>
  reportOf({ growth, nickname: 'Fern', day: '2026-10-25', paper: 'Letter', notes });

describe('a report', () => {
  test('of all there can be takes two pages at most', () => {
    expect([...reportPages(told(FULL, NOTES)).pages].length).toBeLessThanOrEqual(2);
  });

  test('says its caution, and outside it nothing that sounds like a verdict', () => {
    const { care, ...rest } = told(FULL);
    expect(care.paragraphs).toContain(words.care);
    const said = JSON.stringify([rest, TRENDS.map(words.skillTrend), TRENDS.map(words.allSkills)]);
    expect(said).not.toMatch(
      /normal|delay|behind|score|diagnos|average|below|abnormal|weak|poor|disorder|for (his|her|their) age/i,
    );
  });

  test('tells what drawings mean only where there are some', () => {
    expect(told(FULL).opening.join()).toContain('In the drawings the line is');
    const skills = SKILL_VIEWS.map(({ chart: _chart, ...skill }) => skill);
    const opening = told({ ...FULL, skills }).opening.join();
    expect(opening).toContain('the steps of its sheets that fit now are named');
    expect(opening).not.toContain('drawing');
  });

  test('has the day apart from a name that is written the other way', async () => {
    await speakIn('ar');
    expect(told(FULL).foot).toBe('Fern · \u206825 أكتوبر 2026\u2069 · Samewise');
    await speakIn('en');
    expect(told(FULL).foot).toBe('Fern · 25 October 2026 · Samewise');
  });

  test('holds notes only where they are wanted, the newest first', () => {
    expect(JSON.stringify(told(FULL))).not.toContain('Secret');
    expect(told(FULL, NOTES).notes?.items[0]).toContain('Secret 29.');
  });

  test('of a child without records says so and names every skill as not met', () => {
    const skills = SKILL_VIEWS.map(({ chart: _chart, ...skill }) => ({
      ...skill,
      sheets: 0,
      fitting: [],
    }));
    const none: GrowthView = {
      ...FULL,
      sheets: 0,
      days: 0,
      unread: 0,
      skills,
      pairs: [],
      watch: [],
    };
    const report = told(none);
    expect(report.opening).toEqual(['Nothing is recorded yet. Written on 25 October 2026.']);
    expect(report.skills).toEqual([]);
    expect(report.parts.map(({ paragraphs }) => paragraphs.join().split(';').length)).toEqual([
      SKILLS.length,
    ]);
  });

  test('names the most telling pairs and how many there are', () => {
    const pairs = told(FULL).parts.find(({ heading }) => heading === words.mixedUp);
    expect(pairs?.rows?.items[0]).toContain(
      '40 times out of 60 chances, more often than by chance',
    );
    expect(pairs?.paragraphs.join()).toContain('Of 40 pairs these are the most telling.');
  });
});

describe('how sure a step is', () => {
  test.each([
    [1, 13, 'how far is not known well yet'],
    [4, 8, 'probably between step\u00a04 and step\u00a08'],
    [4, 4, 'probably step\u00a04'],
    [1, 6, 'probably step\u00a06 or easier'],
    [5, 13, 'probably step\u00a05 or harder'],
    [13, 13, 'probably step\u00a013'],
  ])('from %d to %d of 13: %s', (least, most, sure) => {
    expect(words.sureOf({ step: least, least, most, steps: 13 })).toBe(sure);
  });
});
