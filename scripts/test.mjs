// Runs every check there is, on a fresh machine too: `npm test`.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { installPackages, ROOT, run } from './install.mjs';

/** Programs of the system that tests read pages with, and the Debian package that brings each. */
const PROGRAMS = {
  chromium: 'chromium',
  pdftoppm: 'poppler-utils',
  qpdf: 'qpdf',
  'hb-shape': 'libharfbuzz-bin',
};

/** Side by side, the longest first; each one's output is shown once it is done. */
const CHECKS = [
  ['types of the command line and tests', 'npx', 'tsc', '-p', 'tsconfig.node.json'],
  ['types of the app', 'npx', 'tsc', '-p', 'tsconfig.web.json'],
  ['types of the core', 'npx', 'tsc', '-p', 'tsconfig.core.json'],
  ['app built', 'npm', 'run', '--silent', 'build:web'],
  ['layers', 'npx', 'depcruise', 'src', '--config', '.dependency-cruiser.cjs'],
  ['types of the service worker', 'npx', 'tsc', '-p', 'tsconfig.worker.json'],
  ['command line built', 'npm', 'run', '--silent', 'build:cli'],
  ['format and lint', 'npx', 'biome', 'check', '--error-on-warnings', '.'],
];
/** They use what is built, and all processors. */
const TESTS = ['tests', 'npx', 'vitest', 'run'];

installPackages();
installPrograms();
const failed = await inTurn(CHECKS, availableParallelism(), runKept);
failed.push(...(await inTurn([TESTS], 1, runShown)));
if (failed.length > 0) {
  console.error(`\nFailed: ${failed.join(', ')}.`);
  process.exit(1);
}
console.log('\nEverything passed.');

/** Runs all stages, `most` of them at a time; the names of those that fail. */
async function inTurn(stages, most, runStage) {
  const left = [...stages];
  const failed = [];
  const worker = async () => {
    for (let stage = left.shift(); stage !== undefined; stage = left.shift()) {
      const [name, command, ...words] = stage;
      const start = Date.now();
      const passed = await runStage(name, command, words);
      const seconds = Math.round((Date.now() - start) / 1000);
      console.log(`── ${name}: ${passed ? 'passed' : 'FAILED'} (${seconds} s)`);
      if (!passed) failed.push(name);
    }
  };
  await Promise.all(Array.from({ length: most }, worker));
  return failed;
}

/** Runs a command and shows what it says once it ends, so that two at a time can be told apart. */
function runKept(name, command, words) {
  const child = spawn(command, words, { cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'] });
  const said = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (piece) => said.push(piece));
  return new Promise((resolve) => {
    child.on('error', () => resolve(false));
    child.on('close', (code) => {
      console.log(`\n── ${name}`);
      process.stdout.write(Buffer.concat(said));
      resolve(code === 0);
    });
  });
}

function runShown(name, command, words) {
  console.log(`\n── ${name}`);
  return run(command, ...words);
}

function installPrograms() {
  const missing = Object.keys(PROGRAMS).filter((program) => !existsSync(`/usr/bin/${program}`));
  if (missing.length === 0) return;
  const packages = [...new Set(missing.map((program) => PROGRAMS[program]))];
  const isRoot = process.getuid?.() === 0;
  const hasApt = spawnSync('apt-get', ['--version']).status === 0;
  if (!isRoot || !hasApt) {
    console.error(
      `The tests need ${missing.join(', ')} in /usr/bin. On Debian: sudo apt-get install ${packages.join(' ')}`,
    );
    process.exit(1);
  }
  console.log(`Installing ${packages.join(', ')} …`);
  const quiet = {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  };
  spawnSync('apt-get', ['update'], quiet);
  if (
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', ...packages], quiet)
      .status !== 0
  ) {
    console.error(`apt-get could not install ${packages.join(', ')}.`);
    process.exit(1);
  }
}
