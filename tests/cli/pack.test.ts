// What `samewise pack` and `samewise again` promise a person at a terminal.
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { emptyFolder, samewise } from './program.ts';

const words = (line: string) => line.split(' ');
const FULL =
  'pack --activity in-every-box --step 2 --tasks 2 --sheets 3 --seed 7 --paper Letter ' +
  '--orientation landscape --print grey --set boxes=4 --set layout=grid --out pack.pdf --json pack.json --svg pages';

describe('a pack with every option', () => {
  let [cwd, again] = ['', ''];
  beforeAll(async () => {
    [cwd, again] = [emptyFolder(), emptyFolder()];
    const outcomes = await Promise.all([
      samewise(words(FULL), { cwd }),
      samewise(words(FULL), { cwd: again }),
    ]);
    for (const { code, stderr } of outcomes) expect(code, stderr).toBe(0);
  });

  it('lies in all three forms where it was asked for, and nothing else does', () => {
    expect(readdirSync(cwd).sort()).toEqual(['pack.json', 'pack.pdf', 'pages']);
    expect(readFileSync(join(cwd, 'pack.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('has the sheets that were asked for', () => {
    const { format, version, sheets } = JSON.parse(readFileSync(join(cwd, 'pack.json'), 'utf8'));
    expect({ format, version }).toEqual({ format: 'samewise.pack', version: 1 });
    expect(sheets).toHaveLength(3);
    for (const sheet of sheets) {
      expect(sheet).toMatchObject({
        activity: 'in-every-box',
        step: 2,
        page: { paper: 'Letter', orientation: 'landscape' },
      });
      expect(sheet.tasks).toHaveLength(2);
      for (const task of sheet.tasks) expect(task.boxes).toHaveLength(4);
    }
  });

  it('names its SVG files by order and code', () => {
    const { sheets } = JSON.parse(readFileSync(join(cwd, 'pack.json'), 'utf8'));
    const codes: readonly string[] = sheets.map(({ code }: { code: string }) => code);
    expect(readdirSync(join(cwd, 'pages')).sort()).toEqual([
      'adult-1.svg',
      'answers-1.svg',
      ...codes.map((code, index) => `sheet-${index + 1}-${code}.svg`),
    ]);
  });

  it('is the same to the byte when it is made again', () => {
    const files = readdirSync(cwd, { recursive: true, encoding: 'utf8', withFileTypes: true });
    const names = files
      .filter((file) => file.isFile())
      .map((file) => join(file.parentPath, file.name));
    expect(names).toHaveLength(7);
    for (const name of names) {
      expect(readFileSync(name).equals(readFileSync(name.replace(cwd, again))), name).toBe(true);
    }
  });

  it('is proven by check', async () => {
    const { code, stdout } = await samewise(['check', 'pack.json'], { cwd });
    expect([code, stdout.toString()]).toEqual([
      0,
      '6 tasks on 3 sheets: every answer is certain.\n',
    ]);
  });

  it('gives each sheet again from its code, however it is typed', async () => {
    const { sheets } = JSON.parse(readFileSync(join(cwd, 'pack.json'), 'utf8'));
    const typed = String(sheets[1].code).toLowerCase().replaceAll('-', ' ');
    const line = ['again', ...typed.split(' '), '--json', 'one.json', '--svg', 'one'];
    const { code, stderr } = await samewise(line, { cwd: again });
    expect(code, stderr).toBe(0);
    const made = JSON.parse(readFileSync(join(again, 'one.json'), 'utf8'));
    expect(made.sheets).toEqual([sheets[1]]);
    const page = (folder: string, name: string) => readFileSync(join(folder, name));
    const code2 = sheets[1].code;
    expect(
      page(again, `one/sheet-1-${code2}.svg`).equals(page(cwd, `pages/sheet-2-${code2}.svg`)),
    ).toBe(true);
  });
});

describe.concurrent('a pack', () => {
  it('from a recipe mixes activities', async () => {
    const cwd = emptyFolder();
    const parts = ['in-every-box', 'by-key', 'copy-pattern'].map((activity) => ({
      activity,
      step: 1,
      sheets: 1,
    }));
    writeFileSync(
      join(cwd, 'recipe.json'),
      JSON.stringify({ format: 'samewise.recipe', version: 1, parts }),
    );
    const line = words('pack --recipe recipe.json --seed 1 --paper Letter --json pack.json');
    const { code, stderr } = await samewise(line, { cwd });
    expect(code, stderr).toBe(0);
    const { sheets } = JSON.parse(readFileSync(join(cwd, 'pack.json'), 'utf8'));
    expect(sheets.map(({ activity }: { activity: string }) => activity)).toEqual(
      parts.map(({ activity }) => activity),
    );
    expect(sheets[0].page.paper).toBe('Letter');
  });

  it('for an age takes the first step that is a guess for it', async () => {
    const cwd = emptyFolder();
    const listed = await samewise(['activities', 'by-key', '--json'], { cwd });
    const { steps } = JSON.parse(listed.stdout.toString());
    const first = steps.find(({ age }: { age: number }) => age === 4);
    const line = words('pack --activity by-key --age 4 --seed 1 --json pack.json');
    expect((await samewise(line, { cwd })).code).toBe(0);
    const { sheets } = JSON.parse(readFileSync(join(cwd, 'pack.json'), 'utf8'));
    expect(sheets[0].step).toBe(first.step);
  });

  it('without a seed says which one it took, and makes the same pack from it', async () => {
    const cwd = emptyFolder();
    const line = words('pack --activity copy-pattern --json one.json');
    const first = await samewise(line, { cwd });
    const seed = /--seed (\d+)/.exec(first.stderr)?.[1] ?? '';
    expect(seed).toMatch(/^\d+$/);
    await samewise([...words('pack --activity copy-pattern --json two.json'), '--seed', seed], {
      cwd,
    });
    const read = (name: string) => readFileSync(join(cwd, name), 'utf8');
    expect(read('two.json')).toBe(read('one.json'));
  });

  it('without a place to go becomes pack.pdf, or the next free name', async () => {
    const cwd = emptyFolder();
    writeFileSync(join(cwd, 'pack.pdf'), 'mine');
    const line = words('pack --activity by-key --seed 1');
    const { code, stderr } = await samewise(line, { cwd });
    expect(code).toBe(0);
    expect(stderr).toContain('wrote pack-2.pdf');
    expect(readFileSync(join(cwd, 'pack.pdf'), 'utf8')).toBe('mine');
  });

  it('goes to standard output where that is asked, with no word among its bytes', async () => {
    const cwd = emptyFolder();
    const line = words('pack --activity by-key --seed 1 --no-answers --no-adult-page --out -');
    const { code, stdout } = await samewise(line, { cwd });
    expect(code).toBe(0);
    expect(stdout.subarray(0, 5).toString()).toBe('%PDF-');
    expect(stdout.subarray(-6).toString()).toBe('%%EOF\n');
    expect(readdirSync(cwd)).toEqual([]);
  });

  it('leaves out answers and the adult’s page where that is asked', async () => {
    const cwd = emptyFolder();
    const line = words('pack --activity by-key --seed 1 --no-answers --no-adult-page --svg pages');
    expect((await samewise(line, { cwd })).code).toBe(0);
    expect(readdirSync(join(cwd, 'pages')).every((name) => name.startsWith('sheet-'))).toBe(true);
  });

  it('that a full disk stops leaves every old file whole and nothing half written', async () => {
    const cwd = emptyFolder();
    mkdirSync(join(cwd, 'pages'));
    for (const name of ['pack.pdf', 'pack.json', 'pages/mine'])
      writeFileSync(join(cwd, name), 'old');
    const line = words(
      'pack --activity by-key --sheets 2 --seed 1 --out pack.pdf --json pack.json --svg pages',
    );
    const { code, stderr } = await samewise(line, { cwd, diskKb: 20 });
    expect([code, stderr]).toEqual([2, expect.stringContaining('cannot be written')]);
    for (const name of ['pack.pdf', 'pack.json', 'pages/mine']) {
      expect(readFileSync(join(cwd, name), 'utf8'), name).toBe('old');
    }
    expect(readdirSync(cwd).sort()).toEqual(['pack.json', 'pack.pdf', 'pages']);
    expect(readdirSync(join(cwd, 'pages'))).toEqual(['mine']);
  });

  it('of which one part is refused writes nothing, the old file stays whole', async () => {
    const cwd = emptyFolder();
    const parts = [
      { activity: 'by-key', step: 1, sheets: 1 },
      { activity: 'by-key', step: 1, sheets: 1, tasks: 12 },
    ];
    writeFileSync(
      join(cwd, 'recipe.json'),
      JSON.stringify({ format: 'samewise.recipe', version: 1, seed: 1, parts }),
    );
    writeFileSync(join(cwd, 'pack.pdf'), 'old');
    const line = words('pack --recipe recipe.json --out pack.pdf --json pack.json');
    const { code, stderr } = await samewise(line, { cwd });
    expect([code, stderr]).toEqual([
      2,
      expect.stringMatching(/parts\[1\] › by-key › tasks: expected at most \d/),
    ]);
    expect(readFileSync(join(cwd, 'pack.pdf'), 'utf8')).toBe('old');
    expect(existsSync(join(cwd, 'pack.json'))).toBe(false);
  });
});

describe('the ink that a pack takes', () => {
  it('is told as it is printed and in the other ink, saving the lesser', async () => {
    const cwd = emptyFolder();
    const asked = words('pack --activity in-every-box --step 3 --seed 5 --out pack.pdf');
    const full = await samewise(asked, { cwd });
    const saving = await samewise([...asked, '--ink', 'saving'], { cwd });
    const line = /ink: about ([\d.]+) % of the page on average, ([\d.]+) % (.*)/;
    const [, share, less, said] = line.exec(full.stderr.toString()) ?? [];
    expect(said).toBe('with --ink saving');
    expect(Number(less)).toBeLessThan(0.75 * Number(share));
    expect(line.exec(saving.stderr.toString())?.slice(1)).toEqual([less, share, 'in full']);
  });
});

describe('a pack only with what a count says there is', () => {
  const stickers = ['red', 'blue', 'green'].map((colour) => ({
    colour,
    diameterMm: 10,
    count: 90,
  }));
  const counted = { stickers, crayons: [], tools: [], printer: 'colour' };
  const part = { activity: 'copy-pattern', step: 3, sheets: 2 };
  const recipe = { format: 'samewise.recipe', version: 1, seed: 7, parts: [part] };
  const codesIn = (path: string): readonly string[] =>
    JSON.parse(readFileSync(path, 'utf8')).sheets.map(({ code }: { code: string }) => code);

  it('is the same from a stock file as from a recipe that holds the count', async () => {
    const cwd = emptyFolder();
    const write = (name: string, what: object) =>
      writeFileSync(join(cwd, name), JSON.stringify(what));
    write('stock.json', { format: 'samewise.stock', version: 1, ...counted });
    write('plain.json', recipe);
    write('recipe.json', { ...recipe, onlyWith: counted });
    for (const line of [
      'plain.json --stock stock.json --json one.json',
      'recipe.json --json two.json',
    ]) {
      const { code, stderr } = await samewise(words(`pack --recipe ${line}`), { cwd });
      expect(code, stderr).toBe(0);
    }
    expect(codesIn(join(cwd, 'one.json'))).toEqual(codesIn(join(cwd, 'two.json')));
    const sheets = readFileSync(join(cwd, 'one.json'), 'utf8');
    expect(sheets).toContain('"stickerMm":10');
    for (const colour of ['yellow', 'purple', 'pink', 'orange'])
      expect(sheets).not.toContain(colour);
  });
});
