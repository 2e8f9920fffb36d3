// Makes sure that the packages of the lock file are installed; uses nothing but Node itself.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));
const STAMP = join(ROOT, 'node_modules', '.samewise-installed');

/** Runs a command in the project's folder with its output shown; returns whether it succeeded. */
export function run(command, ...words) {
  const { status } = spawnSync(command, words, { cwd: ROOT, stdio: 'inherit' });
  return status === 0;
}

/** `npm ci`, unless what the lock file asks for is installed already. */
export function installPackages() {
  const wanted = createHash('sha256')
    .update(readFileSync(join(ROOT, 'package-lock.json')))
    .digest('hex');
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === wanted) return;
  console.log('Installing the packages that Samewise is built with …');
  if (!run('npm', 'ci', '--no-audit', '--no-fund')) {
    console.error(
      'The packages could not be installed; npm says why above. Is the registry reachable?',
    );
    process.exit(1);
  }
  mkdirSync(dirname(STAMP), { recursive: true });
  writeFileSync(STAMP, wanted);
}
