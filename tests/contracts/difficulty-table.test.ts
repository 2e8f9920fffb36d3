// The table in docs/difficulty.md is the table that the program uses.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { FEATURE_NAMES, FEATURES } from '../../src/activities/index.ts';
import { BASE_LOGITS, WEIGHTS } from '../../src/learner/index.ts';

const PAGE = readFileSync(new URL('../../docs/difficulty.md', import.meta.url), 'utf8');

test('has every feature with its unit, weight and source', () => {
  const rows = PAGE.split('\n').filter((line) => /^\| `\w+` \|/.test(line));
  const expected = FEATURE_NAMES.map((name) => {
    const { logits, source } = WEIGHTS[name];
    return `| \`${name}\` | ${FEATURES[name]} | ${logits} | ${source} |`;
  });
  expect(rows).toEqual(expected);
});

test('names the base', () => {
  expect(PAGE).toContain(`the base is ${String(BASE_LOGITS).replace('-', '−')}.`);
});
