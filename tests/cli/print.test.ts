// What the command line promises of papers, of two sheets on one page, and of printers that do not keep true size.
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder, samewise } from './program.ts';

const words = (line: string) => line.split(' ');
const A5 =
  'pack --activity odd-one-out --paper A5 --sheets 3 --seed 3 --no-adult-page --no-answers';

/** Sizes of the pages of a PDF in whole points, as poppler reads them. */
function sizesOf(file: string): readonly string[] {
  const info = execFileSync('pdfinfo', ['-l', '99', file], { encoding: 'utf8' });
  return [...info.matchAll(/size:\s+([\d.]+) x ([\d.]+)/g)].map(
    ([, width, height]) => `${Math.round(Number(width))} × ${Math.round(Number(height))}`,
  );
}

describe('sheets of A5', () => {
  it('come two on one A4; with --single each on its own page; as SVG always so', async () => {
    const cwd = emptyFolder();
    for (const more of ['--out two.pdf --svg pages', '--single --out one.pdf']) {
      const { code, stderr } = await samewise(words(`${A5} ${more}`), { cwd });
      expect(code, stderr).toBe(0);
    }
    expect(sizesOf(join(cwd, 'two.pdf'))).toEqual(['842 × 595', '842 × 595']);
    expect(sizesOf(join(cwd, 'one.pdf'))).toEqual(['420 × 595', '420 × 595', '420 × 595']);
    expect(readdirSync(join(cwd, 'pages'))).toHaveLength(3);
  });
});

it('--single is refused with other paper, whose sheets have pages of their own anyway', async () => {
  const cwd = emptyFolder();
  const { code, stderr } = await samewise(words('pack --activity odd-one-out --single'), { cwd });
  expect(code).toBe(2);
  expect(stderr).toContain('--single: expected sheets of A5 (--paper A5)');
  expect(stderr).toContain('A4');
  expect(readdirSync(cwd)).toEqual([]);
});

describe('--measured', () => {
  const PACK = 'pack --activity odd-one-out --seed 1';

  it('changes what stands on a page, not its size, and takes a comma for a point', async () => {
    const cwd = emptyFolder();
    for (const more of [
      '--out usual.pdf',
      '--measured 48.5 --out point.pdf',
      '--measured 48,5 --out comma.pdf',
    ]) {
      const { code, stderr } = await samewise(words(`${PACK} ${more}`), { cwd });
      expect(code, stderr).toBe(0);
    }
    const [usual, point, comma] = ['usual', 'point', 'comma'].map((name) =>
      join(cwd, `${name}.pdf`),
    );
    const bytes = (file = '') => readFileSync(file);
    expect(bytes(point).equals(bytes(comma))).toBe(true);
    expect(bytes(point).equals(bytes(usual))).toBe(false);
    expect(sizesOf(point ?? '')).toEqual(sizesOf(usual ?? ''));
  });

  it.each([
    ['44', '', 'only 45 to 55 mm can'],
    ['47', '--paper A3', 'on A3, at least 47.2 mm can be put right, got 47 mm'],
    ['half', '', 'such as 48.5, got "half"'],
  ])('refuses %s %s in a sentence, and writes nothing', async (measured, more, sentence) => {
    const cwd = emptyFolder();
    const line = `${PACK} --measured ${measured} ${more}`.trim();
    const { code, stderr } = await samewise(words(line), { cwd });
    expect(code).toBe(2);
    expect(stderr).toContain('samewise: --measured: ');
    expect(stderr).toContain(sentence);
    expect(readdirSync(cwd)).toEqual([]);
  });
});

describe('samewise ruler', () => {
  it('writes one page to check a printer with, on the paper that goes into it, and replaces nothing', async () => {
    const cwd = emptyFolder();
    for (const line of ['ruler', 'ruler --paper A3', 'ruler --paper a5 --out small.pdf']) {
      const { code, stderr } = await samewise(words(line), { cwd });
      expect(code, stderr).toBe(0);
    }
    expect(readdirSync(cwd).sort()).toEqual(['ruler-2.pdf', 'ruler.pdf', 'small.pdf']);
    expect(sizesOf(join(cwd, 'ruler.pdf'))).toEqual(['595 × 842']);
    expect(sizesOf(join(cwd, 'ruler-2.pdf'))).toEqual(['842 × 1191']);
    expect(sizesOf(join(cwd, 'small.pdf'))).toEqual(['595 × 842']);
  });

  it('comes on standard output where that is asked for, and refuses a paper that there is not', async () => {
    const cwd = emptyFolder();
    const { stdout } = await samewise(words('ruler --out -'), { cwd });
    expect(stdout.subarray(0, 5).toString()).toBe('%PDF-');
    const refused = await samewise(words('ruler --paper A2'), { cwd });
    expect(refused.code).toBe(2);
    expect(refused.stderr).toContain('--paper');
    expect(readdirSync(cwd)).toEqual([]);
  });
});
