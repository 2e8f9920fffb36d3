// What Samewise stands on: all of it known by version, sum and licence, nothing of it run or fetched while installing.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { LICENCES, licencesText, lockFile, productionPackages } from '../scripts/licences.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const read = (...path: readonly string[]) => readFileSync(join(ROOT, ...path), 'utf8');
const lock = lockFile();
const packages = productionPackages(lock);
const locked = Object.entries(lock.packages).filter(([path]) => path !== '');

/** Licences under which a copy may be given on with its notice, and nothing else is asked. */
const PERMISSIVE = ['0BSD', 'Apache-2.0', 'BSD-3-Clause', 'ISC', 'MIT', 'OFL-1.1', 'Unlicense'];

test('docs/licences.md is what the lock file gives', () => {
  expect(readFileSync(LICENCES, 'utf8')).toBe(licencesText(lock));
});

test('docs/trust.md states how many packages a running Samewise has', () => {
  const direct = packages.filter(({ isDirect }) => isDirect).length;
  expect(read('docs', 'trust.md')).toContain(
    `${packages.length} packages: ${direct} that it asks for and ${packages.length - direct} that those need`,
  );
  expect(direct).toBe(Object.keys(JSON.parse(read('package.json')).dependencies).length);
});

test('every licence is a permissive one, and the package that is installed says the same', () => {
  for (const { path, name, version, licence } of packages) {
    expect(PERMISSIVE, name).toContain(licence.replace(/ \(.*/, ''));
    const installed = JSON.parse(read(path, 'package.json'));
    expect([installed.name, installed.version]).toEqual([name, version]);
    if (licence.endsWith('(its file LICENSE)'))
      expect(read(path, 'LICENSE')).toMatch(/^MIT License/);
    else expect(installed.license, name).toBe(licence);
  }
});

test('fonts and pictures are credited, those of packages and those that lie here', () => {
  const text = readFileSync(LICENCES, 'utf8');
  const fonts = packages.filter(({ name }) => name.startsWith('@fontsource'));
  expect(fonts.length).toBeGreaterThan(3);
  for (const { path, name } of fonts) {
    const family = name.replace(/^.*\//, '').replaceAll('-', ' ');
    expect(text.toLowerCase(), name).toContain(family);
    expect(read(path, 'LICENSE'), name).toContain('SIL Open Font License, Version 1.1');
  }
  expect(text).toContain('SIL International');
  expect(text).toContain('Fluent Emoji');
  expect(read('assets', 'fonts', 'OFL.txt')).toContain('SIL Open Font License, Version 1.1');
  expect(read('assets', 'fonts', 'OFL-Noto.txt')).toContain('SIL Open Font License, Version 1.1');
  expect(read('assets', 'pictures', 'LICENSE')).toContain('Microsoft Corporation');
});

test('no package of any kind runs a script when it is installed', () => {
  expect(
    locked.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path),
  ).toEqual([]);
  const { scripts } = JSON.parse(read('package.json'));
  const own = ['preinstall', 'install', 'postinstall', 'prepare'].map((name) => scripts[name]);
  // Our own step builds the command line from what is there.
  expect(own).toEqual([undefined, undefined, undefined, 'npm run --silent build:cli']);
});

test('the lock file has a sum for every package and no address of a registry', () => {
  expect(locked.length).toBeGreaterThan(packages.length);
  for (const [path, { integrity, resolved }] of locked) {
    expect(integrity, path).toMatch(/^sha512-[A-Za-z0-9+/]{86}==$/);
    expect(resolved, path).toBeUndefined();
  }
  expect(read('package-lock.json')).not.toMatch(/registry\.|\.tgz/);
});

test('every package that Samewise asks for is pinned to one version', () => {
  const { dependencies, devDependencies } = JSON.parse(read('package.json'));
  const asked: Readonly<Record<string, string>> = { ...dependencies, ...devDependencies };
  for (const [name, version] of Object.entries(asked)) {
    expect(version, name).toMatch(/^\d+\.\d+\.\d+(-[\w.]+)?$/);
    expect(lock.packages[`node_modules/${name}`]?.version, name).toBe(version);
  }
});
