// A link writes values by their identifiers; whoever reads why it was refused sees the names on the controls instead.
import { afterAll, describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../../activities/index.ts';
import { LANGUAGES } from '../../languages/index.ts';
import { type Entries, FIRST_ENTRIES } from '../recipe/entries.ts';
import { speakIn } from '../speaking/language-now.ts';
import { words } from '../words.ts';
import { keptPack } from './kept-pack.ts';
import { replyOf } from './reply.ts';

function objectionsTo(changed: Partial<Entries>): string {
  const entries = { ...FIRST_ENTRIES, seed: 1, ...changed };
  const reply = replyOf(keptPack({ entries }, 1), entries.activity);
  if (reply.ok) throw new Error('expected an objection');
  return reply.objections.map(({ sentence }) => sentence).join(' ');
}

afterAll(() => speakIn('en'));

describe.each(LANGUAGES)('%s', (language) => {
  test('an unknown activity is refused with the names of those that are known', async () => {
    await speakIn(language);
    const told = objectionsTo({ activity: 'juggling' });
    expect(told).toContain('juggling');
    for (const id of ACTIVITY_IDS) expect(told).toContain(activityOf(id).words[language].name);
    const hyphened = ACTIVITY_IDS.filter((id) => id.includes('-') && told.includes(id));
    expect(hyphened).toEqual([]);
  });

  test('so are an unknown print and orientation', async () => {
    await speakIn(language);
    expect(objectionsTo({ print: 'sepia' })).toContain(words.prints.grey);
    expect(objectionsTo({ orientation: 'askew' })).toContain(words.orientations.landscape);
  });

  test('a mistyped activity gets the name of the nearest', async () => {
    await speakIn(language);
    const { name } = activityOf('tangle').words[language];
    expect(objectionsTo({ activity: 'tangel' }).split(name)).toHaveLength(3);
  });

  test('names that every object has stay the words they are', async () => {
    await speakIn(language);
    for (const word of ['constructor', '__proto__', 'toString']) {
      expect(objectionsTo({ activity: word, print: word })).toContain(word);
    }
  });
});
