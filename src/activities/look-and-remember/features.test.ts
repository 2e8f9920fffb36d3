// How hard a page is, where what its figures differ in is nothing that a child is asked to see.
import { expect, test } from 'vitest';
import type { Figure } from '../../figures/index.ts';
import { features } from './features.ts';

test('what is measured is a number where figures differ in the size of their dots alone', () => {
  const three: Figure = { form: 'dots', count: 3 };
  const measured = features({ set: [three], choices: [three, { ...three, dotSize: 1.4 }] });
  for (const [name, value] of Object.entries(measured)) {
    expect(Number.isFinite(value), name).toBe(true);
  }
});
