// A recipe that holds pictures of a family's own, through the command line from end to end.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { ownPictureId } from '../../src/figures/index.ts';
import { ownCopyOf } from '../own-pictures.ts';
import { emptyFolder, samewise } from './program.ts';

const NAMES = ['cat', 'umbrella', 'key', 'snake', 'tree', 'plane', 'bed', 'giraffe'] as const;
const PICTURES = NAMES.map((name) => ownCopyOf(`picture-${name}`, `our ${name}`));

function recipeWith(pictures: readonly unknown[]): string {
  return JSON.stringify({
    format: 'samewise.recipe',
    version: 1,
    seed: 5,
    pictures,
    onlyOwnPictures: true,
    parts: [{ activity: 'find-the-same', step: 1, values: { content: 'pictures' }, sheets: 2 }],
  });
}

it('a recipe with own pictures makes a pack that holds them and is proven again from itself alone', async () => {
  const cwd = emptyFolder();
  writeFileSync(join(cwd, 'recipe.json'), recipeWith(PICTURES));
  const words = ['pack', '--recipe', 'recipe.json', '--out', 'pack.pdf', '--json', 'pack.json'];
  const made = await samewise(words, { cwd });
  expect(made.code, made.stderr).toBe(0);
  expect(readFileSync(join(cwd, 'pack.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  const { pictures, sheets } = JSON.parse(readFileSync(join(cwd, 'pack.json'), 'utf8'));
  expect(pictures.map(ownPictureId).sort()).toEqual(PICTURES.map(ownPictureId).sort());
  expect(JSON.stringify(sheets)).toContain('picture-own-');
  const checked = await samewise(['check', 'pack.json'], { cwd });
  expect(checked.code, checked.stderr).toBe(0);
});

it('a recipe whose picture is none is refused with its place, and nothing is written', async () => {
  const cwd = emptyFolder();
  writeFileSync(join(cwd, 'recipe.json'), recipeWith([{ ...PICTURES[0], outline: 'M0 0Lx 1Z' }]));
  const made = await samewise(['pack', '--recipe', 'recipe.json', '--out', 'pack.pdf'], { cwd });
  expect(made.code).not.toBe(0);
  expect(made.stderr).toContain('recipe › pictures[0]');
  expect(made.stderr).toContain('closed paths of M, L, Q, C and Z');
  expect(() => readFileSync(join(cwd, 'pack.pdf'))).toThrow();
});
