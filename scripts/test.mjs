// Runs every check there is, on a fresh machine too: `npm test`.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { installPackages, run } from './install.mjs';

/** Programs of the system that tests read pages with, and the Debian package that brings each. */
const PROGRAMS = {
  chromium: 'chromium',
  pdftoppm: 'poppler-utils',
  qpdf: 'qpdf',
  'hb-shape': 'libharfbuzz-bin',
};

const STAGES = [
  ['format and lint', 'npx', 'biome', 'check', '--error-on-warnings', '.'],
  ['types of the core', 'npx', 'tsc', '-p', 'tsconfig.core.json'],
  ['types of the command line and tests', 'npx', 'tsc', '-p', 'tsconfig.node.json'],
  ['types of the app', 'npx', 'tsc', '-p', 'tsconfig.web.json'],
  ['types of the service worker', 'npx', 'tsc', '-p', 'tsconfig.worker.json'],
  ['layers', 'npx', 'depcruise', 'src', '--config', '.dependency-cruiser.cjs'],
  ['command line built', 'npm', 'run', '--silent', 'build:cli'],
  ['app built', 'npm', 'run', '--silent', 'build:web'],
  ['tests', 'npx', 'vitest', 'run'],
];

installPackages();
installPrograms();
const failed = STAGES.filter(([name, command, ...words]) => {
  const start = Date.now();
  console.log(`\n── ${name}`);
  const passed = run(command, ...words);
  console.log(
    `── ${name}: ${passed ? 'passed' : 'FAILED'} (${Math.round((Date.now() - start) / 1000)} s)`,
  );
  return !passed;
});
if (failed.length > 0) {
  console.error(`\nFailed: ${failed.map(([name]) => name).join(', ')}.`);
  process.exit(1);
}
console.log('\nEverything passed.');

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
