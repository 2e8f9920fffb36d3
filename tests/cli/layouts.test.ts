// What `samewise pack` promises of papers and layouts.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCode } from '../../src/sheets/index.ts';
import { emptyFolder, samewise } from './program.ts';

const PACK = ['pack', '--activity', 'by-key', '--step', '2', '--seed', '3', '--json', 'pack.json'];

function specIn(cwd: string) {
  const { sheets } = JSON.parse(readFileSync(join(cwd, 'pack.json'), 'utf8'));
  const read = readCode(sheets[0].code);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value;
}

describe('a pack in another layout', () => {
  it('has it in the codes of its sheets, and is checked like any other', async () => {
    const cwd = emptyFolder();
    const layout = ['--hand', 'left', '--size', 'large', '--ink', 'saving', '--margin', 'pocket'];
    const made = await samewise([...PACK, ...layout, '--paper', 'A3'], { cwd });
    expect(made.code, made.stderr).toBe(0);
    expect(specIn(cwd)).toMatchObject({
      page: { paper: 'A3', orientation: 'portrait', margin: 'pocket' },
      hand: 'left',
      size: 'large',
      ink: 'saving',
    });
    const checked = await samewise(['check', 'pack.json'], { cwd });
    expect(checked.code, checked.stderr).toBe(0);
  });

  it('is told the usual in words, too, and then has the code of the usual sheet', async () => {
    const [one, other] = [emptyFolder(), emptyFolder()];
    await samewise(PACK, { cwd: one });
    await samewise([...PACK, '--hand', 'right', '--size', 'usual', '--ink', 'full'], {
      cwd: other,
    });
    expect(specIn(other)).toEqual(specIn(one));
  });

  it.each([
    [['--hand', 'both'], '--hand: expected one of right, left, got "both"'],
    [['--size', 'huge'], '--size: expected one of usual, large, got "huge"'],
    [['--ink', 'none'], '--ink: expected one of full, saving, got "none"'],
    [['--margin', '3'], '--margin: expected one of usual, pocket, got "3"'],
  ])('with %j is refused by name', async (layout, sentence) => {
    const made = await samewise([...PACK, ...layout], { cwd: emptyFolder() });
    expect(made.code).toBe(2);
    expect(made.stderr).toContain(sentence);
  });
});
