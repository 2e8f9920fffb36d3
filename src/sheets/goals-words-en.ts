// English words of the goals of curricula: our own paraphrases, never the published wording.
import type { GoalsWords, ServedGoal } from './page-words.ts';

export const GOALS_WORDS_EN: GoalsWords = {
  title: 'Goals that the sheets serve',
  note: 'Which sheet serves which goal is our own reading, in our own words.',
  frameworks: {
    'head-start': 'Head Start, US 2015',
    'common-core': 'Common Core Math, kindergarten, US',
    eyfs: 'EYFS, England 2021',
    'ncf-fs': 'NCF-FS, India 2022',
    'te-whariki': 'Te Whariki, New Zealand 2017',
  },
  meanings: {
    'P-ATL 6': 'keeps attention on a task',
    'P-ATL 7': 'stays with a task',
    'P-ATL 8': 'holds things in mind',
    'P-ATL 9': 'thinks flexibly',
    'P-MATH 1-5': 'counts and compares small numbers',
    'P-MATH 7': 'simple patterns',
    'P-MATH 8': 'compares by size',
    'P-MATH 9': 'shapes',
    'P-MATH 10': 'positions and directions',
    'P-PMP 3': 'works with the small muscles of the hand',
    'P-SCI 3': 'compares and groups what it sees',
    'K.CC.C.6': 'more, fewer, or as many',
    'K.MD.B.3': 'sorts into given groups',
    'K.G.A.2': 'knows shapes however turned or sized',
    'K.G.B.4': 'compares shapes',
    'K.G.B.5': 'draws shapes',
    'ELG Number': 'sees how many at a glance, up to 5',
    'ELG Numerical Patterns': 'compares quantities, up to 10',
    'ELG Fine Motor Skills': 'holds a pencil, uses small tools',
    'C-2.1': 'tells shapes, colours and shades apart',
    'C-2.2': 'keeps in mind what it has seen',
    'C-3.3': 'works precisely with the hands',
    'C-7.1': 'sees kinds of things and how they belong together',
    'C-8.1': 'sorts by more than one property',
    'C-8.2': 'sees and continues patterns',
    'C-8.8': 'knows basic shapes',
    'CG-13': 'habits of learning',
    Exploration: 'strand of exploring, thinking and reasoning',
  },
  served: (goals) => `${goals.map(servedGoal).join('; ')}.`,
};

/** Such as `P-MATH 7: simple patterns (sheets 2–3)`; the identifier stays on one line. */
function servedGoal({ id, meaning, sheets }: ServedGoal): string {
  const name = `${id.replaceAll(' ', '\u00a0')}: ${meaning}`;
  return sheets ? `${name} (${sheets.count === 1 ? 'sheet' : 'sheets'} ${sheets.text})` : name;
}
