// What `--pieces`, `--key-card` and `--cards` promise a person at a terminal.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { emptyFolder, samewise } from './program.ts';

const words = (line: string) => line.split(' ');

async function made(line: string, cwd = emptyFolder()): Promise<string> {
  const { code, stderr } = await samewise(words(line), { cwd });
  expect(code, stderr).toBe(0);
  return cwd;
}

const sheetsIn = (cwd: string) => JSON.parse(readFileSync(join(cwd, 'pack.json'), 'utf8'));

describe('a pack with pages to cut', () => {
  const asked =
    'pack --activity find-the-same --step 4 --sheets 2 --seed 5 --json pack.json --svg pages --no-answers --no-adult-page';

  it('has them as files behind their sheet, in print order', async () => {
    const cwd = await made(`${asked} --cards --key-card`);
    const codes = sheetsIn(cwd).sheets.map(({ code }: { code: string }) => code);
    expect(readdirSync(join(cwd, 'pages')).sort()).toEqual(
      codes.flatMap((code: string, index: number) =>
        ['', '_cards-1', '_key-card-1'].map((kind) => `sheet-${index + 1}-${code}${kind}.svg`),
      ),
    );
  });

  it('keeps the choice in its pack file and leaves sheets and codes as they are', async () => {
    const [plain, cut] = [await made(asked), await made(`${asked} --cards`)];
    expect(sheetsIn(cut).toCut).toEqual(['cards']);
    expect(sheetsIn(cut).sheets).toEqual(sheetsIn(plain).sheets);
    const check = await samewise(['check', 'pack.json'], { cwd: cut });
    expect(check.code, check.stderr).toBe(0);
  });

  it('takes the choice from a recipe, and adds to it', async () => {
    const cwd = emptyFolder();
    const parts = [{ activity: 'crossing-table', step: 4, sheets: 1 }];
    const recipe = { format: 'samewise.recipe', version: 1, seed: 3, toCut: ['pieces'], parts };
    writeFileSync(join(cwd, 'recipe.json'), JSON.stringify(recipe));
    await made('pack --recipe recipe.json --cards --json pack.json', cwd);
    expect(sheetsIn(cwd).toCut).toEqual(['cards', 'pieces']);
  });

  it('comes from a sheet code as well', async () => {
    const cwd = await made('pack --activity one-of-each --step 3 --seed 5 --json pack.json');
    const { code } = sheetsIn(cwd).sheets[0];
    await made(`again ${code} --pieces --svg again`, cwd);
    expect(readdirSync(join(cwd, 'again'))).toContain(`sheet-1-${code}_pieces-1.svg`);
  });
});

it.each([
  ['pieces', 'odd-one-out', 'empty places for figures'],
  ['key-card', 'continue-row', 'a key or one model'],
])('--%s is refused where no sheet can have it, with what would do', async (option, id, what) => {
  const cwd = emptyFolder();
  const line = `pack --activity ${id} --seed 5 --${option} --out pack.pdf`;
  const { code, stderr } = await samewise(words(line), { cwd });
  expect(code).toBe(2);
  expect(stderr).toContain(`--${option}`);
  expect(stderr).toContain(what);
  expect(readdirSync(cwd)).toEqual([]);
});

it('a recipe with an unknown choice is refused by its path', async () => {
  const cwd = emptyFolder();
  const parts = [{ activity: 'one-of-each', step: 4, sheets: 1 }];
  const recipe = { format: 'samewise.recipe', version: 1, toCut: ['pieces', 'boxes'], parts };
  writeFileSync(join(cwd, 'recipe.json'), JSON.stringify(recipe));
  const { code, stderr } = await samewise(words('pack --recipe recipe.json'), { cwd });
  expect(code).toBe(2);
  expect(stderr).toContain('toCut[1]');
});
