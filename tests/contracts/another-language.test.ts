// A further language is a catalogue and no code: with all messages in other letters, nothing is said in Latin ones.
import { describe, expect, test, vi } from 'vitest';
import {
  ACTIVITY_IDS,
  type ActivityWords,
  activityOf,
  FEATURE_NAMES,
} from '../../src/activities/index.ts';
import { difficultyFrom, explainDifficulty } from '../../src/learner/index.ts';
import { everyTask, saidAtOnce, saidOf } from '../every-task.ts';
import { IS_WHOLE } from '../whole.ts';
import { INVENTED } from './invented.ts';

vi.mock('../../src/languages/language.ts', () => import('./invented.ts'));
vi.mock('../../src/languages/catalogues.ts', () => import('./invented.ts'));

const other = INVENTED;

describe.each(ACTIVITY_IDS)('%s', (id) => {
  test('says nothing that is in no message', () => {
    const activity = activityOf(id);
    const words: ActivityWords = activity.words[other];
    const sentences = new Set(saidAtOnce(words));
    for (const task of everyTask(activity, 60, IS_WHOLE ? 'all' : 'some')) {
      for (const sentence of saidOf(words, task)) sentences.add(sentence);
    }
    expect([...sentences].filter((sentence) => LATIN_WORD.test(sentence))).toEqual([]);
  });
});

test('why a task is hard is said in no other words than those of messages', () => {
  for (const feature of FEATURE_NAMES) {
    const said = explainDifficulty(difficultyFrom({ [feature]: 9 }), other);
    expect(said, feature).not.toMatch(LATIN_WORD);
  }
});

/** Single letters are spoken of: they are what some tasks are about. */
const LATIN_WORD = /[A-Za-z]{2}/;
