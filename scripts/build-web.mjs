// Builds the web app unless its last build is newer than all that it is made from.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './install.mjs';

export const WEB_FOLDER = join(ROOT, 'dist', 'web');

const SOURCES = [
  'src',
  'assets',
  'index.html',
  'vite.config.ts',
  'scripts/installable.ts',
  'scripts/lean.ts',
  'scripts/parts-said.ts',
  'package-lock.json',
];

/** Returns whether there is a build of the present sources; says why not on standard error. */
export function buildWeb() {
  const built = timeOf(join(WEB_FOLDER, 'index.html'));
  const changed = Math.max(...SOURCES.map((name) => newestUnder(join(ROOT, name))));
  if (built > changed) return true;
  console.log('Building the app …');
  // A caller's own NODE_ENV, such as a test runner's, would make a build for developers.
  const env = { ...process.env, NODE_ENV: 'production' };
  const words = ['vite', 'build', '--logLevel', 'warn'];
  return spawnSync('npx', words, { cwd: ROOT, stdio: 'inherit', env }).status === 0;
}

/** When the newest file under a path was changed, in ms; a test is no source of the app. */
function newestUnder(path) {
  if (!existsSync(path)) return 0;
  if (!statSync(path).isDirectory()) return path.endsWith('.test.ts') ? 0 : timeOf(path);
  return Math.max(0, ...readdirSync(path).map((name) => newestUnder(join(path, name))));
}

function timeOf(path) {
  return existsSync(path) ? statSync(path).mtimeMs : 0;
}
