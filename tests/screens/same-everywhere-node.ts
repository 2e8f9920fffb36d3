// The world of Node for the test of equal bytes, in a process of its own: bundles from one file, the world to another.
import { readFileSync, writeFileSync } from 'node:fs';
import { LANGUAGES, registerCatalogue } from '../../src/languages/index.ts';
import { FONTS } from '../outside/press-reading.ts';
import { fontFile } from '../outside/script-fonts.ts';
import { makeWorld } from './same-everywhere-entry.ts';

export async function main([from = '', to = '']: readonly string[]): Promise<void> {
  // What starts this file can fetch no module once it runs.
  for (const language of LANGUAGES) {
    if (language === 'en') continue;
    const file = new URL(`../../src/languages/${language}.json`, import.meta.url);
    registerCatalogue(language, JSON.parse(readFileSync(file, 'utf8')));
  }
  const bundles = JSON.parse(readFileSync(from, 'utf8'));
  const world = await makeWorld(bundles, { fonts: FONTS, read: async (file) => fontFile(file) });
  writeFileSync(to, JSON.stringify(world));
}
