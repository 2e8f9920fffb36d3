// The disk fails, or the program is killed, at every single change that a command makes: no file is ever half there.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { emptyFolder, PROGRAM, samewise } from './program.ts';

const DYING = fileURLToPath(new URL('dying.mjs', import.meta.url));
const ON_THE_WAY = /(^|\/)\.samewise-[^/]*\.part$/;

interface Fault {
  readonly how: 'kill' | 'full' | 'none';
  /** The number of the change of the disk at which it happens, from 1. */
  readonly at: number;
}

interface Ended {
  readonly signal: NodeJS.Signals | null;
  readonly code: number | null;
  readonly said: string;
}

/** Runs a command line that meets a fault; `countTo` is a file that gets the number of changes of a whole run. */
function runWith(fault: Fault, line: string, cwd: string, countTo?: string): Promise<Ended> {
  const env = {
    ...process.env,
    DISK_FAULT: fault.how,
    DISK_FAULT_AT: String(fault.at),
    ...(countTo === undefined ? {} : { DISK_CHANGES_TO: countTo }),
  };
  const words = ['--import', DYING, PROGRAM, ...line.split(' ')];
  const child = spawn(process.execPath, words, { cwd, env, stdio: ['ignore', 'ignore', 'pipe'] });
  let said = '';
  child.stderr.on('data', (piece: Buffer) => {
    said += piece.toString();
  });
  return new Promise((resolve) => {
    child.on('close', (code, signal) => resolve({ code, signal, said }));
  });
}

type Folder = ReadonlyMap<string, string>;

/** Every file below a folder by its path, with a hash of what is in it. */
function filesIn(folder: string): Folder {
  const found = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  const paths = found.map((entry) => join(entry.parentPath, entry.name)).sort();
  return new Map(
    paths.map((path) => [
      path.slice(folder.length + 1),
      createHash('sha256').update(readFileSync(path)).digest('hex'),
    ]),
  );
}

function ready(folder: Folder): Folder {
  return new Map([...folder].filter(([path]) => !ON_THE_WAY.test(path)));
}

interface Scene {
  /** The command before the one that meets the fault; absent: the folder holds a stranger's file alone. */
  readonly before?: string;
  readonly line: string;
  /** Files in the order in which they take their place, as the command was given them. */
  readonly order: readonly RegExp[];
}

const SMALL = 'pack --activity in-every-box --step 2 --tasks 1 --sheets 1';
const CODE = '3A4E-P243-RARP-RK';

const SCENES: Readonly<Record<string, Scene>> = {
  'a PDF and its pack file, over older ones': {
    before: `${SMALL} --seed 7 --out pack.pdf --json pack.json`,
    line: `${SMALL} --seed 8 --out pack.pdf --json pack.json`,
    order: [/^pack\.json$/, /^pack\.pdf$/],
  },
  'pages and a PDF for each child, in new folders': {
    line: `${SMALL} --seed 8 --children Fern --per-child kids --svg pages --no-adult-page`,
    order: [/^pages\//, /^kids\//],
  },
  'one sheet again, under the first free name': {
    line: `again ${CODE} --no-answers --no-adult-page`,
    order: [/\.pdf$/],
  },
  'the ruler, over an older one': {
    before: 'ruler --paper A4 --out ruler.pdf',
    line: 'ruler --paper Letter --out ruler.pdf',
    order: [/^ruler\.pdf$/],
  },
};

/** A folder as it is before the command. */
async function folderBefore({ before }: Scene): Promise<string> {
  const folder = emptyFolder();
  writeFileSync(join(folder, 'mine.txt'), 'not Samewise’s');
  if (before !== undefined)
    expect((await samewise(before.split(' '), { cwd: folder })).code).toBe(0);
  return folder;
}

/** Each file as it was or as it becomes, and none new where one that takes its place earlier is old. */
function expectWhole(now: Folder, before: Folder, after: Folder, order: readonly RegExp[]): void {
  for (const [path, hash] of now) expect([before.get(path), after.get(path)], path).toContain(hash);
  for (const path of before.keys()) expect(now.has(path), path).toBe(true);
  const changed = [...after.keys()].filter((path) => before.get(path) !== after.get(path));
  const isNew = (path: string) => now.get(path) === after.get(path);
  const groups = order.map((name) => changed.filter((path) => name.test(path)));
  expect(groups.flat().sort()).toEqual(changed.sort());
  groups.forEach((group, index) => {
    if (group.some(isNew)) expect(groups.slice(0, index).flat().every(isNew)).toBe(true);
  });
}

async function inTwos(count: number, work: (number: number) => Promise<void>): Promise<void> {
  let next = 1;
  const worker = async () => {
    while (next <= count) await work(next++);
  };
  await Promise.all([worker(), worker()]);
}

describe.each(Object.entries(SCENES))('%s', (_, scene) => {
  test('are whole whenever the program is killed or the disk is full, and the next run makes all good', async () => {
    const start = await folderBefore(scene);
    const whole = emptyFolder();
    cpSync(start, whole, { recursive: true });
    const countTo = join(emptyFolder(), 'count');
    const ended = await runWith({ how: 'none', at: 0 }, scene.line, whole, countTo);
    expect(ended).toMatchObject({ code: 0 });
    const [before, after] = [filesIn(start), filesIn(whole)];
    const changes = Number(readFileSync(countTo, 'utf8'));
    expect(changes).toBeGreaterThan(3 * scene.order.length);
    await inTwos(changes, async (at) => {
      const folder = emptyFolder();
      cpSync(start, folder, { recursive: true });
      const full = await runWith({ how: 'full', at }, scene.line, folder);
      expect(full, `full at ${at}`).toMatchObject({ code: 2 });
      expect(full.said).toContain('the disk is full');
      // A refusal leaves nothing on the way, a kill may; neither leaves half a file.
      expectWhole(filesIn(folder), before, after, scene.order);
      rmSync(folder, { recursive: true });
      cpSync(start, folder, { recursive: true });
      const killed = await runWith({ how: 'kill', at }, scene.line, folder);
      expect(killed, `killed at ${at}`).toMatchObject({ signal: 'SIGKILL' });
      expectWhole(ready(filesIn(folder)), before, after, scene.order);
      const next = await samewise(scene.line.split(' '), { cwd: folder });
      expect(next.code, next.stderr).toBe(0);
      expect(filesIn(folder)).toEqual(after);
      rmSync(folder, { recursive: true });
    });
  }, 600_000);
});

test('files on the way of a run that goes on, or of another machine, are left alone', async () => {
  const cwd = emptyFolder();
  const here = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);
  const running = `.samewise-${here}-${process.pid}-00000000.part`;
  const elsewhere = '.samewise-00000000-4194305-00000000.part';
  const ended = `.samewise-${here}-4194305-00000000.part`;
  for (const name of [running, elsewhere, ended]) writeFileSync(join(cwd, name), 'half');
  // A folder of such a name is not Samewise's.
  mkdirSync(join(cwd, `.samewise-${here}-4194306-00000000.part`));
  expect((await samewise(['ruler'], { cwd })).code).toBe(0);
  expect([running, elsewhere, ended].map((name) => existsSync(join(cwd, name)))).toEqual([
    true,
    true,
    false,
  ]);
  expect(existsSync(join(cwd, `.samewise-${here}-4194306-00000000.part`))).toBe(true);
});
