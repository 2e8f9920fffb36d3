// What the commands that only read promise: check, activities, schema, help.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS } from '../../src/activities/index.ts';
import { makeSheet, type SheetRequest } from '../../src/sheets/index.ts';
import { emptyFolder, samewise } from './program.ts';

const figure = (colour: string) => ({ form: 'circle', colour });
const box = (...colours: readonly string[]) => ({ figures: colours.map(figure) });
const boxes = [box('red', 'blue'), box('yellow', 'red'), box('red', 'green')];
const fileWith = (...answers: readonly string[]) =>
  JSON.stringify({
    format: 'samewise.pack',
    version: 1,
    sheets: [
      {
        code: 'by hand',
        activity: 'in-every-box',
        step: 1,
        page: { paper: 'A4', orientation: 'portrait' },
        tasks: answers.map((colour) => ({ boxes, answer: { figures: [figure(colour)] } })),
      },
    ],
  });

describe.concurrent('samewise check', () => {
  it('ends with 0 where every answer is certain', async () => {
    const { code, stdout } = await samewise(['check', '-'], {
      cwd: emptyFolder(),
      input: fileWith('red'),
    });
    expect([code, stdout.toString()]).toEqual([0, '1 task on 1 sheet: every answer is certain.\n']);
  });

  it('ends with 1 and names each task that is wrong, with its sheet and the reason', async () => {
    const cwd = emptyFolder();
    writeFileSync(join(cwd, 'pack.json'), fileWith('red', 'blue', 'green'));
    const { code, stdout } = await samewise(['check', 'pack.json'], { cwd });
    const lines = stdout.toString().trimEnd().split('\n');
    expect(code).toBe(1);
    expect(lines[0]).toMatch(/^sheets\[0\]\.tasks\[1\] \(in-every-box, by hand\) is wrong: /);
    expect(lines[1]).toMatch(/^sheets\[0\]\.tasks\[2\] /);
    expect(lines[2]).toBe('2 of 3 tasks not certain.');
  });

  it('ends with 2 and the path of the fault where the file is none of ours', async () => {
    const input = fileWith('red').replace('"yellow"', '"mauve"');
    const { code, stderr } = await samewise(['check', '-'], { cwd: emptyFolder(), input });
    expect(code).toBe(2);
    expect(stderr).toContain('sheets[0].tasks[0].boxes[1].figures[0].colour: expected one of');
  });

  it('reads no more of an endless input than the limit', async () => {
    const { code, stderr } = await samewise(['check', '/dev/zero'], { cwd: emptyFolder() });
    expect([code, stderr]).toEqual([2, expect.stringMatching(/pack: expected at most \d+ bytes/)]);
  });
});

describe.concurrent('samewise activities', () => {
  it('lists contents, responses, parameters with ranges and steps of every activity', async () => {
    const { code, stdout } = await samewise(['activities'], { cwd: emptyFolder() });
    const text = stdout.toString();
    expect(code).toBe(0);
    for (const id of ACTIVITY_IDS) expect(text).toContain(`${id}: `);
    expect(text.match(/^ {2}(Contents|Responses|Parameters|Steps)$/gm)).toHaveLength(
      4 * ACTIVITY_IDS.length,
    );
    expect(text).toMatch(/boxes +2 to 6/);
  });

  it('lists one alone, and as JSON', async () => {
    const cwd = emptyFolder();
    const [text, json] = await Promise.all([
      samewise(['activities', 'by-key'], { cwd }),
      samewise(['activities', '--json'], { cwd }),
    ]);
    expect(text.stdout.toString()).not.toContain('copy-pattern');
    const listed: readonly { id: string; steps: unknown[] }[] = JSON.parse(json.stdout.toString());
    expect(listed.map(({ id }) => id)).toEqual(ACTIVITY_IDS);
    for (const { steps } of listed) expect(steps.length).toBeGreaterThanOrEqual(8);
  });
});

describe.concurrent('standard output', () => {
  it('that cannot be written to is told', async () => {
    const cwd = emptyFolder();
    const { code, stderr } = await samewise(['activities'], { cwd, outTo: '/dev/full' });
    expect([code, stderr]).toEqual([
      2,
      'samewise: standard output: cannot be written: the disk is full.\n',
    ]);
  });
});

describe.concurrent('samewise schema', () => {
  it('prints each schema, or all by name', async () => {
    const cwd = emptyFolder();
    const [all, pack, recipe, stock] = (
      await Promise.all(
        [[], ['pack'], ['recipe'], ['stock']].map((names) =>
          samewise(['schema', ...names], { cwd }),
        ),
      )
    ).map(({ stdout }) => JSON.parse(stdout.toString()));
    expect(all).toEqual({ pack, recipe, stock });
    expect(pack.properties.format.const).toBe('samewise.pack');
    expect(recipe.properties.format.const).toBe('samewise.recipe');
    expect(stock.properties.format.const).toBe('samewise.stock');
    expect(recipe.properties.onlyWith.properties.stickers).toEqual(stock.properties.stickers);
  });
});

describe.concurrent('samewise --help', () => {
  it.each([[], ['pack'], ['check'], ['again'], ['activities'], ['schema']])(
    '%s is told on standard output',
    async (...command) => {
      const { code, stdout, stderr } = await samewise([...command, '--help'], {
        cwd: emptyFolder(),
      });
      expect([code, stderr]).toEqual([0, '']);
      expect(stdout.toString()).toMatch(/^Usage: samewise/);
    },
  );

  it('tells the version of the package', async () => {
    const { version } = JSON.parse(
      readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
    );
    const { stdout } = await samewise(['--version'], { cwd: emptyFolder() });
    expect(stdout.toString()).toBe(`${version}\n`);
  });

  it('is what a person gets who types no command', async () => {
    const { code, stderr } = await samewise([], { cwd: emptyFolder() });
    expect([code, stderr]).toEqual([2, expect.stringMatching(/^Usage: samewise/)]);
  });
});

describe.concurrent('samewise again, of a sheet that was changed', () => {
  const asked = { step: 3, values: {}, seed: 7, page: { paper: 'A4', orientation: 'portrait' } };
  const [first, second] = [0, 1].map((place) => [place, { colour: 'red' }] as const);
  const edit = { task: 0, shape: [], figures: first && second ? [first, second] : [], facts: [] };
  const spec = { ...asked, activity: 'in-every-box', print: 'colour', edits: [edit] } as const;

  it('writes one that is not certain only after a yes, and says so', async () => {
    const made = makeSheet(spec as unknown as SheetRequest);
    const sheet = made.ok ? made.value.code : '';
    const cwd = emptyFolder();
    const refused = await samewise(['again', sheet, '--json', 'a.json'], { cwd });
    expect(refused.code).toBe(2);
    expect(refused.stderr).toContain('--uncertain');
    const written = await samewise(['again', sheet, '--uncertain', '--json', 'a.json'], { cwd });
    expect([written.code, written.stderr]).toEqual([0, expect.stringContaining('not certain')]);
    const checked = await samewise(['check', 'a.json'], { cwd });
    expect(checked.code).toBe(0);
    expect(checked.stdout.toString()).toContain('but for 1 changed');
  });
});
