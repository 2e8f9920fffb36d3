// Which tasks are drawn as outlines to save ink, and that nothing but their drawing differs.
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../base/index.ts';
import type { PrintStyle } from '../page/index.ts';
import { styleForTask } from './ink-saving.ts';
import { ACTIVITIES, ACTIVITY_IDS, type ActivityId, activityOf } from './registry.ts';

const FULL: PrintStyle = { print: 'colour' };
const SAVING: PrintStyle = { print: 'colour', ink: 'saving' };

/** Whether the first task of a step with these values looks unlike when it is to save ink. */
function savesInk(id: ActivityId, step: number, values: Record<string, unknown> = {}): boolean {
  const activity = activityOf(id);
  const read = activity.read(step, values, FULL);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const task = activity.generate(read.value, randomFrom(5), FULL);
  const size = activity.room(task.printed);
  const [full, saving] = [FULL, SAVING].map((style) => activity.draw(task, size, style, true));
  return JSON.stringify(full) !== JSON.stringify(saving);
}

describe('styleForTask', () => {
  it('saves only where that is asked for', () => {
    expect(styleForTask([{ form: 'star' }], FULL)).toBe(FULL);
    expect(styleForTask([{ form: 'star' }], SAVING)).toBe(SAVING);
  });

  it.each([
    ['an outline', { form: 'star', fill: 'outline' }],
    ['a texture', { form: 'star', fill: 'checks' }],
    ['a quantity', { form: 'dots', count: 3 }],
    ['a white figure', { form: 'star', colour: 'white' }],
  ])('does not where %s is printed, however deep', (_, figure) => {
    const printed = { boxes: [[{ form: 'heart', colour: 'red' }], [figure]] };
    expect(styleForTask(printed, SAVING)).toEqual(FULL);
  });

  it('does not where the activity says that filling matters', () => {
    expect(styleForTask([{ form: 'star' }], SAVING, true)).toEqual(FULL);
  });
});

describe('a task that is to save ink', () => {
  it.each<readonly [ActivityId, number, Record<string, unknown>]>([
    ['in-every-box', 1, {}],
    ['odd-one-out', 1, {}],
    ['find-the-same', 1, {}],
    ['find-the-same', 1, { content: 'pictures' }],
    ['size-order', 1, {}],
    ['missing-part', 1, {}],
    ['one-of-each', 1, { response: 'point' }],
  ])('is drawn as outlines: %s, step %i, %j', (id, step, values) => {
    expect(savesInk(id, step, values)).toBe(true);
  });

  it.each<readonly [ActivityId, number, Record<string, unknown>]>([
    ['in-every-box', 1, { content: 'textures' }],
    ['in-every-box', 1, { content: 'dot-quantities' }],
    ['shadows', 1, {}],
    ['shadows', 1, { content: 'shapes' }],
    ['tangle', 1, {}],
    ['copy-pattern', 1, {}],
    ['mirror-half', 1, {}],
    ['one-of-each', 1, { response: 'sticker' }],
    ['one-of-each', 1, { response: 'colour-in' }],
    ['continue-row', 1, { response: 'sticker' }],
  ])('keeps its full drawing where filling matters: %s, step %i, %j', (id, step, values) => {
    expect(savesInk(id, step, values)).toBe(false);
  });

  it('is the same task: what is asked, its answer and its room know nothing of ink', () => {
    for (const id of ACTIVITY_IDS) {
      for (const step of ACTIVITIES[id].ladder.keys()) {
        const activity = activityOf(id);
        const [full, saving] = [FULL, SAVING].map((style) => {
          const read = activity.read(step + 1, {}, style);
          if (!read.ok) throw new Error(JSON.stringify(read.refusals));
          return activity.generate(read.value, randomFrom(step), style);
        });
        expect(saving, `${id}, step ${step + 1}`).toEqual(full);
      }
    }
  });
});
