// Runs the built command line as a person does, in a folder of its own.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
/** What a person starts. */
export const PROGRAM = join(ROOT, 'bin', 'samewise.js');
const BUILT = join(ROOT, 'dist', 'cli', 'samewise.js');

export interface Outcome {
  readonly code: number;
  readonly stdout: Buffer;
  readonly stderr: string;
}

export interface Surroundings {
  readonly cwd: string;
  /** What comes in on standard input. */
  readonly input?: string;
  /** Largest file that may be written, in kilobytes: a disk that fills up. */
  readonly diskKb?: number;
  /** A file or device in place of standard output. */
  readonly outTo?: string;
}

/** Runs `samewise` with these words and gives back all that came out. */
export function samewise(
  words: readonly string[],
  { cwd, input = '', diskKb, outTo }: Surroundings,
): Promise<Outcome> {
  const limit = diskKb === undefined ? '' : `ulimit -f ${diskKb}; `;
  const redirect = outTo === undefined ? '' : ` > ${outTo}`;
  const child = spawn(
    'bash',
    ['-c', `${limit}exec "$@"${redirect}`, 'run', process.execPath, PROGRAM, ...words],
    {
      cwd,
    },
  );
  const out: Buffer[] = [];
  const err: Buffer[] = [];
  child.stdout.on('data', (piece: Buffer) => out.push(piece));
  child.stderr.on('data', (piece: Buffer) => err.push(piece));
  child.stdin.on('error', () => {
    // A program that refuses at once reads nothing.
  });
  child.stdin.end(input);
  return new Promise((resolve) => {
    child.on('close', (code) =>
      resolve({
        code: code ?? -1,
        stdout: Buffer.concat(out),
        stderr: Buffer.concat(err).toString('utf8'),
      }),
    );
  });
}

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A new empty folder, which goes with all in it after the tests of the file. */
export function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'samewise-'));
  folders.push(folder);
  return folder;
}

const LAYERS_BELOW_WEB =
  /^(base|languages|palette|figures|page|activities|learner|editing|sheets|by-hand|press|shaping|records|supplies|plan|words|cli)\b.*(?<!\.test)\.(ts|js|json)$/;

function newestIn(folder: string): number {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const times = files
    .filter((file) => LAYERS_BELOW_WEB.test(file))
    .map((file) => statSync(join(folder, file)).mtimeMs);
  return Math.max(...times);
}

// Testing yesterday's program would prove nothing.
if (!existsSync(BUILT) || statSync(BUILT).mtimeMs < newestIn(join(ROOT, 'src'))) {
  throw new Error('the built command line is missing or old: run "npm run build:cli" first');
}
