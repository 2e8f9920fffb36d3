// Hostile inputs of every kind that comes from outside, some hundreds of each; `npm run fuzz` gives very many.
import { beforeAll, describe, expect, it } from 'vitest';
import { kindsOf } from '../scripts/fuzz/kinds.ts';
import { runKind } from '../scripts/fuzz/run-kind.ts';
import { buildKinds, watched } from '../scripts/fuzz/watched.ts';
import { loadAllCatalogues } from '../src/languages/index.ts';
import { testSeed } from './seed.ts';

const INPUTS = 300;
/** Of these each takes many times as long. */
const FEWER: Readonly<Record<string, number>> = {
  photo: 15,
  link: 100,
  'small-text': 150,
};
/** It says much and has a working folder of its own, so that it runs as a process of its own. */
const APART = 'command-line';
const COMMANDS = 150;

const seed = testSeed('hostile inputs');

beforeAll(loadAllCatalogues);

describe('a hostile input', () => {
  it.each(kindsOf().filter(({ name }) => name !== APART))(
    'of the kind $name is read or refused in words, and changes nothing else',
    async ({ name, use }) => {
      const inputs = FEWER[name] ?? INPUTS;
      const report = await use((kind) => runKind(kind, { inputs, seed, isTimed: false }));
      expect(report.failures).toEqual([]);
      expect(report.inputs).toBe(inputs);
    },
  );

  it('on the command line is read or refused in words, and writes nowhere else', async () => {
    await buildKinds();
    const { failures, end, inputs } = await watched(APART, COMMANDS, seed, { isTimed: false });
    expect({ failures, end, inputs }).toEqual({ failures: [], end: undefined, inputs: COMMANDS });
  });
});
