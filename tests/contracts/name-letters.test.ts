// Sheets about the letters of a name: proven, about these letters, made again from their code, and empty of the name.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { randomFrom } from '../../src/base/index.ts';
import {
  alphabetOf,
  CONTENT_IDS,
  type ContentId,
  isOfLetters,
  lettersOfName,
} from '../../src/figures/index.ts';
import { settle } from '../../src/learner/index.ts';
import {
  changesOf,
  lettersShown,
  makePack,
  makeSheet,
  readCode,
  type Sheet,
} from '../../src/sheets/index.ts';

const SEED = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 32));
const STYLE = { print: 'colour' } as const;
const LETTER_CONTENTS = CONTENT_IDS.filter((id) => isOfLetters(id, CONTENT_IDS));

/** An invented nickname: two to nine letters of the content's alphabet, some of them twice. */
function nickname(content: ContentId, random: ReturnType<typeof randomFrom>): string {
  const alphabet = [...alphabetOf(content)];
  return Array.from({ length: random.int(2, 9) }, () => random.pick(alphabet)).join('');
}

/** A sheet of a content at the first step that can have it; none where the activity has no such content. */
function sheetOf(
  id: (typeof ACTIVITY_IDS)[number],
  content: ContentId,
  letters: string,
  seed: number,
): Sheet | undefined {
  const activity = activityOf(id);
  const spec = activity.parameters.content;
  if (spec?.kind !== 'choice' || !spec.values.includes(content)) return undefined;
  for (const [index, { values: own }] of activity.ladder.entries()) {
    const settled = settle(activity, own, { content }, own, STYLE);
    if (!settled.ok) continue;
    const step = index + 1;
    const values = changesOf({ activity: id, step }, settled.value);
    const page = { paper: 'A4', orientation: 'portrait' } as const;
    const made = makeSheet({ activity: id, step, values, seed, page, print: 'colour', letters });
    if (made.ok) return made.value;
  }
  return undefined;
}

describe('a sheet about the letters of a name', () => {
  it.each(ACTIVITY_IDS)(
    '%s: is proven with every script, is made again from its code, and shows them where it can',
    (id) => {
      const random = randomFrom(SEED);
      let sheets = 0;
      let shown = 0;
      for (const content of LETTER_CONTENTS) {
        const name = nickname(content, random);
        const at = `seed ${SEED}, ${id}, ${content}, ${name}`;
        const sheet = sheetOf(id, content, name, random.int(0, 2 ** 32 - 1));
        if (!sheet) continue;
        sheets += 1;
        const letters = lettersOfName(content, name).letters;
        expect(sheet.spec.letters, at).toBe(letters);
        const read = readCode(sheet.code);
        expect(read, at).toEqual({ ok: true, value: sheet.spec });
        if (read.ok) expect(makeSheet(read.value), at).toEqual({ ok: true, value: sheet });
        if (lettersShown(sheet.tasks, letters) !== '') shown += 1;
      }
      const activity = activityOf(id);
      const spec = activity.parameters.content;
      const has = LETTER_CONTENTS.some(
        (each) => spec?.kind === 'choice' && spec.values.includes(each),
      );
      expect(sheets > 0, `seed ${SEED}`).toBe(has);
      if (has && !LIMITED.includes(id)) expect(shown, `seed ${SEED}`).toBe(sheets);
    },
    120_000,
  );

  it('gives the same code to names of the same letters', () => {
    const codeOf = (letters: string) =>
      sheetOf('find-the-same', 'capitals', letters, 7)?.code ?? letters;
    expect(codeOf('Moss')).toBe(codeOf('soM'));
    expect(codeOf('Moss')).not.toBe(codeOf('Fern'));
  });

  it('has the code that it was printed with', () => {
    expect(readCode('722W-4U4A-77KX-3UEM-P6YY-C7AU-W')).toEqual({
      ok: true,
      value: {
        activity: 'find-the-same',
        step: 2,
        values: { content: 'capitals' },
        seed: 3,
        tasks: 4,
        page: { paper: 'A4', orientation: 'portrait' },
        print: 'colour',
        letters: 'ENRW',
      },
    });
  });

  it('looks for the letters of a name that is long enough and for no other', () => {
    for (const seed of [1, 2, 3]) {
      const sheet = sheetOf('find-the-same', 'capitals', 'Bertram', seed);
      const models = sheet?.tasks.map(
        ({ printed }) => (printed as { model: { form: string } }).model,
      );
      expect(models?.every(({ form }) => 'ABEMRT'.includes(form.slice(-1)))).toBe(true);
    }
  });

  it('is as ever where the content is not of letters, or draws none of them', () => {
    const plain = sheetOf('find-the-same', 'capitals', '', 5);
    for (const name of ['🙂', '漢字', '!', 'Мила']) {
      expect(sheetOf('find-the-same', 'capitals', name, 5)).toEqual(plain);
    }
    expect(sheetOf('find-the-same', 'numerals', 'Wren', 5)?.spec.letters).toBeUndefined();
  });

  it('gives each child of a group its own letters', () => {
    const pack = makePack({
      seed: 11,
      page: { paper: 'A4', orientation: 'portrait' },
      print: 'colour',
      ownLetters: true,
      parts: [{ activity: 'find-the-same', step: 1, values: { content: 'capitals' }, sheets: 2 }],
      children: [{ name: 'Wren' }, { name: 'Moss' }],
    });
    if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
    const own = pack.value.sheets.map(({ child, spec }) => [child?.name, spec.letters]);
    expect(own).toEqual([
      ['Wren', 'ENRW'],
      ['Wren', 'ENRW'],
      ['Moss', 'MOS'],
      ['Moss', 'MOS'],
    ]);
  });
});

/** Activities whose letters are measured sets: those that may be turned, have a mirror line or lie over one another. */
const LIMITED: readonly string[] = ['turned-shapes', 'mirror-half', 'tangle'];

describe('a name', () => {
  it.each([
    ['capitals', 'Zoë', 'EOZ', ['ë'], []],
    ['spanish-capitals', 'Íñigo', 'GIOÑ', ['Í'], []],
    ['small-letters', "O'Neil-Ray", 'aeilnory', [], []],
    ['capitals', 'A', 'A', [], []],
    ['capitals', 'Łukasz', 'AKSUZ', [], ['Ł']],
    ['capitals', '🙂漢', '', [], ['🙂', '漢']],
    ['capitals', 'x'.repeat(200), 'X', [], []],
    ['greek-small', 'Νίκος', 'ικνος'.replace('ς', 'σ').split('').sort().join(''), ['ί'], []],
    ['cyrillic-capitals', 'Алёна', 'АЁЛН', [], []],
    ['devanagari-varnamala', 'ऋतिका', 'ऋकत', [], ['ि', 'ा']],
    ['arabic-letters', 'أحمد', 'احدم', ['أ'], []],
    ['arabic-letters-with-hamza', 'أحمد', 'أحدم', [], []],
    ['arabic-letters', 'مُنى', 'من', [], ['ُ', 'ى']],
  ] as const)('in %s, %s gives %s', (content, name, letters, plain, leftOut) => {
    const given = lettersOfName(content, name);
    expect([...given.letters].sort()).toEqual([...letters].sort());
    expect(given.plain.map(([written]) => written)).toEqual(plain);
    expect(given.leftOut).toEqual(leftOut);
  });
});
