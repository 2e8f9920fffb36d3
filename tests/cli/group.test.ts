// What `samewise pack` promises for a group.
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { difficultyOf } from '../../src/learner/index.ts';
import { emptyFolder, samewise } from './program.ts';

const PACK = ['pack', '--activity', 'odd-one-out', '--step', '4', '--sheets', '2', '--seed', '3'];
const NAMES = 'Wren, Moss+1, ليلى, 🌿, Zoë Żółć';

interface FileSheet {
  readonly child: { readonly number: number; readonly name: string };
  readonly step: number;
  readonly activity: string;
  readonly tasks: readonly Record<string, unknown>[];
}

function sheetsIn(folder: string): readonly FileSheet[] {
  return JSON.parse(readFileSync(join(folder, 'pack.json'), 'utf8')).sheets;
}

/** Reckoned anew from the printed facts of the file. */
function logitsOf({ activity, tasks }: FileSheet): number {
  const id = ACTIVITY_IDS.find((each) => each === activity);
  if (id === undefined) throw new Error(activity);
  const all = tasks.map(
    ({ answer: _answer, difficulty: _difficulty, ...printed }) =>
      difficultyOf(activityOf(id), printed).logits,
  );
  return all.reduce((sum, logits) => sum + logits, 0) / all.length;
}

describe('a pack for a group', () => {
  it('has each name on paper, in other scripts, too', async () => {
    const cwd = emptyFolder();
    const names = ['ليلى', 'אורי', 'आरव', 'Соня', 'Ελένη'];
    const words = [...PACK, '--children', names.join(','), '--out', 'pack.pdf'];
    const made = await samewise(words, { cwd });
    expect(made.code, made.stderr).toBe(0);
    const text = execFileSync('pdftotext', [join(cwd, 'pack.pdf'), '-'], { encoding: 'utf8' });
    // Twice on the sheets, twice with the answers, once in the table.
    for (const name of names) expect(text.split(name).length - 1, name).toBe(5);
  });

  it('has different sheets of equal difficulty with each child’s name, and is checked like any other', async () => {
    const cwd = emptyFolder();
    const made = await samewise([...PACK, '--children', NAMES, '--json', 'pack.json'], { cwd });
    expect(made.code, made.stderr).toBe(0);
    const sheets = sheetsIn(cwd);
    expect(sheets.map(({ child, step }) => `${child.number} ${child.name} ${step}`)).toEqual(
      ['1 Wren 4', '2 Moss 5', '3 ليلى 4', '4 🌿 4', '5 Zoë Żółć 4'].flatMap((row) => [row, row]),
    );
    const logits = sheets.filter(({ step }) => step === 4).map(logitsOf);
    expect(Math.max(...logits) - Math.min(...logits)).toBeLessThanOrEqual(0.25);
    expect(new Set(sheets.map(({ tasks }) => JSON.stringify(tasks))).size).toBe(sheets.length);
    const check = await samewise(['check', 'pack.json'], { cwd });
    expect(check.code, check.stderr).toBe(0);
  });

  it('lies by activity and comes as one PDF for each child where that is asked for', async () => {
    const cwd = emptyFolder();
    const words = [...PACK, '--children', NAMES, '--sorted', 'activity', '--per-child', 'home'];
    const made = await samewise([...words, '--json', 'pack.json'], { cwd });
    expect(made.code, made.stderr).toBe(0);
    expect(sheetsIn(cwd).map(({ child }) => child.number)).toEqual([1, 1, 2, 2, 3, 3, 4, 4, 5, 5]);
    const files = readdirSync(join(cwd, 'home')).sort();
    expect(files).toEqual(['1-Wren.pdf', '2-Moss.pdf', '3-ليلى.pdf', '4.pdf', '5-Zoë-Żółć.pdf']);
  });

  it.each([
    ['no name at all', ['--children', ' , ']],
    ['a name of more than 200 characters', ['--children', 'x'.repeat(201)]],
    ['an order that there is not', ['--children', 'Wren', '--sorted', 'age']],
    ['an order without a group', ['--sorted', 'child']],
    ['a PDF for each child without a group', ['--per-child', 'home']],
    ['more than 500 children', ['--children', Array.from({ length: 501 }, () => 'x').join(',')]],
  ])('is refused in a sentence for %s, and nothing is written', async (_, options) => {
    const cwd = emptyFolder();
    const made = await samewise([...PACK, ...options], { cwd });
    expect(made.code).toBe(2);
    expect(made.stderr).toMatch(/^samewise: .*\.\n$/);
    expect(existsSync(join(cwd, 'home')) || readdirSync(cwd).length > 0).toBe(false);
  });
});
