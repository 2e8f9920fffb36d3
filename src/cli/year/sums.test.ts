// What the sums of a child's packs promise: they tell what is as it was made, whatever happened to the file of them.
import { createHash } from 'node:crypto';
import { appendFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addSums, readSums, type Sum, sortSums, sumsFileIn } from './sums.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'samewise-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function sumOf(name: string, bytes: string): Sum {
  return { name, sha256: createHash('sha256').update(bytes).digest('hex') };
}

const text = () => readFileSync(sumsFileIn(folder), 'utf8');

describe('the sums of packs', () => {
  it('tell a pack that is as it was made from one that is not, one without a sum, and one that is gone', () => {
    addSums(folder, [sumOf('week-01.pdf', 'made'), sumOf('week-02.pdf', 'made')]);
    writeFileSync(join(folder, 'week-01.pdf'), 'made');
    writeFileSync(join(folder, 'week-02.pdf'), 'made, and a note');
    writeFileSync(join(folder, 'week-03.pdf'), 'made');
    const names = ['week-01.pdf', 'week-02.pdf', 'week-03.pdf', 'week-04.pdf'];
    expect(names.map(readSums(folder))).toEqual([true, false, false, false]);
  });

  it('hold for each sum that a pack was ever written with', () => {
    addSums(folder, [sumOf('week-01.pdf', 'first')]);
    addSums(folder, [sumOf('week-01.pdf', 'second')]);
    for (const bytes of ['first', 'second']) {
      writeFileSync(join(folder, 'week-01.pdf'), bytes);
      expect(readSums(folder)('week-01.pdf')).toBe(true);
    }
  });

  it('lose nothing where the line before was cut short, as by a full disk', () => {
    addSums(folder, [sumOf('week-01.pdf', 'one')]);
    appendFileSync(sumsFileIn(folder), sumOf('week-02.pdf', 'two').sha256.slice(0, 40));
    addSums(folder, [sumOf('week-03.pdf', 'three')]);
    writeFileSync(join(folder, 'week-01.pdf'), 'one');
    writeFileSync(join(folder, 'week-03.pdf'), 'three');
    expect(['week-01.pdf', 'week-03.pdf'].map(readSums(folder))).toEqual([true, true]);
  });

  it('come into the order of the packs, each line once and whole, in the form that sha256sum checks', async () => {
    const [one, two] = [sumOf('week-01.pdf', 'one'), sumOf('week-02.json', 'two')];
    for (const sums of [[two], [one], [two]]) addSums(folder, sums);
    appendFileSync(sumsFileIn(folder), 'cut short');
    await sortSums(folder);
    expect(text()).toBe(`${one.sha256}  week-01.pdf\n${two.sha256}  week-02.json\n`);
    await sortSums(folder);
    expect(text()).toBe(`${one.sha256}  week-01.pdf\n${two.sha256}  week-02.json\n`);
  });
});
