// Words of the command line: read by the program itself, in a folder of its own from which nothing may come out.
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve, sep } from 'node:path';
import { CommanderError } from 'commander';
import fc from 'fast-check';
import { ACTIVITY_IDS } from '../../src/activities/index.ts';
import { Refused } from '../../src/cli/failure.ts';
import { programOf } from '../../src/cli/program.ts';
import { packFileText } from '../../src/sheets/index.ts';
import { sentenceOf } from '../../src/words/index.ts';
import { someSheets } from './bases.ts';
import { hostileText } from './hostile.ts';
import type { Kind } from './kind.ts';

const FLAGS =
  'pieces key-card cards single no-answers no-adult-page by-hand half-made quick own-letters uncertain json help version'.split(
    ' ',
  );
/** Options and values some of which are as they should be; no pack of very many sheets, which takes its time. */
const VALUES: Readonly<Record<string, readonly string[]>> = {
  activity: [...ACTIVITY_IDS, 'in-every-boxes', '__proto__'],
  step: ['1', '2', '0', '-1', '99', '1.5', '0x1'],
  age: ['3', '4', '5', '2', '6', 'three'],
  difficulty: ['0', '-1.5', '99', '1e9', '-'],
  tasks: ['1', '2', '0', '12', '13', '99999999999999999999'],
  sheets: ['1', '2', '0', '99999999', '1e9'],
  seed: ['0', '1', '4294967295', '4294967296', '-0'],
  paper: ['A4', 'a5', 'Letter', 'A0'],
  orientation: ['portrait', 'landscape', 'sideways'],
  print: ['colour', 'grey', 'cmyk'],
  colours: ['red,blue', 'red', 'red,,blue', ','],
  hand: ['left', 'right', 'both'],
  size: ['large', 'usual', 'huge'],
  ink: ['saving', 'full', 'none'],
  margin: ['pocket', 'usual', 'wide'],
  'letters-of': ['Wren', '', 'Ж', '123'],
  set: ['boxes=3', 'content=shapes', '=', 'a=b=c', '__proto__=1', 'constructor=1'],
  goals: ['', 'all', ','],
  recipe: ['recipe.json', 'pack.json', 'folder', 'none.json', 'bad.json', '-'],
  stock: ['stock.json', 'recipe.json', 'folder', '-'],
  children: ['Wren, Moss', '../../x, ..', 'Wren, Wren +1', ',', '\u202eabc', 'CON, a/b\\c'],
  sorted: ['child', 'activity', 'size'],
  'per-child': ['children', 'pack.json', 'none/children', ''],
  out: ['out.pdf', '-', 'folder', 'none/out.pdf', '', 'a\u0000b'],
  svg: ['pages', 'pack.json', 'none/pages', ''],
  language: ['en', 'es', 'hi', 'ar', 'xx', '__proto__'],
  measured: ['50', '48,5', '60', 'x'],
  sticker: ['13', '8', '0', '1e2'],
};
const COMMANDS = [
  'pack',
  'check',
  'again',
  'ruler',
  'activities',
  'schema',
  '',
  'packs',
  '__proto__',
];

const FILES: Readonly<Record<string, string>> = {
  'recipe.json': JSON.stringify({
    format: 'samewise.recipe',
    version: 1,
    parts: [{ activity: 'odd-one-out', step: 1, tasks: 1, sheets: 1 }],
    children: [{ name: '../../x' }, { name: 'Moss' }],
  }),
  'bad.json': '{"format":"samewise.recipe","__proto__":[]}',
  'stock.json': '{"format":"samewise.stock","version":1,"stickers":[],"crayons":[],"tools":[]}',
};

/** A folder three below one that is watched. */
interface Sandbox {
  readonly root: string;
  readonly work: string;
  readonly kept: ReadonlySet<string>;
}

function openSandbox(): Sandbox {
  const root = mkdtempSync(join(tmpdir(), 'samewise-fuzz-'));
  const work = join(root, 'outer', 'inner', 'work');
  mkdirSync(join(work, 'folder'), { recursive: true });
  const [sheet] = someSheets();
  if (!sheet) throw new Error('fuzz › sheets: expected one, got none');
  const files = { ...FILES, 'pack.json': packFileText({ sheets: [sheet] }) };
  for (const [name, text] of Object.entries(files)) writeFileSync(join(work, name), text);
  process.chdir(work);
  process.on('exit', () => rmSync(root, { recursive: true, force: true }));
  return { root, work, kept: new Set([...Object.keys(files), 'folder']) };
}

/** Throws where anything but the working folder has something new; what is new there goes again. */
function nothingOutside({ root, work, kept }: Sandbox): void {
  const around = [root, join(root, 'outer'), join(root, 'outer', 'inner')];
  const found = around.flatMap((folder) => readdirSync(folder));
  if (found.join() !== 'outer,inner,work') throw new Error(`written outside: ${found.join()}`);
  for (const name of readdirSync(work)) {
    if (name.endsWith('.part')) throw new Error(`left behind: ${name}`);
    if (!kept.has(name)) rmSync(join(work, name), { recursive: true, force: true });
  }
}

/** A word that names a place outside is not given: there the program may write, if asked to. */
function isInside(word: string, work: string): boolean {
  const named = word.slice(word.indexOf('=') + 1);
  return [word, named].every((path) => {
    const place = resolve(work, path);
    return place === work || place.startsWith(work + sep) || !/[/.]/.test(path);
  });
}

function lines(codes: readonly string[]): fc.Arbitrary<readonly string[]> {
  const anyText = fc.oneof(hostileText, fc.constantFrom(...codes, ...ACTIVITY_IDS));
  const option = fc
    .constantFrom(...Object.keys(VALUES))
    .chain((name) =>
      fc
        .tuple(
          fc.oneof(
            { weight: 4, arbitrary: fc.constantFrom(...(VALUES[name] ?? [])) },
            { weight: 1, arbitrary: hostileText },
          ),
          fc.nat(9),
        )
        .map(([value, form]) => (form === 0 ? [`--${name}=${value}`] : [`--${name}`, value])),
    );
  const flag = fc.constantFrom(...FLAGS).map((name) => [`--${name}`]);
  const odd = anyText.map((text) => [text]);
  const options = fc.array(
    fc.oneof({ weight: 8, arbitrary: option }, { weight: 2, arbitrary: flag }, odd),
    { maxLength: 6 },
  );
  const pack = options.map((all) => ['pack', '--activity', 'odd-one-out', ...all.flat()]);
  const recipe = options.map((all) => ['pack', '--recipe', 'recipe.json', ...all.flat()]);
  const again = fc.tuple(anyText, options).map(([code, all]) => ['again', code, ...all.flat()]);
  const any = fc
    .tuple(fc.constantFrom(...COMMANDS), anyText, options)
    .map(([command, word, all]) => [command, word, ...all.flat()]);
  return fc.oneof(pack, recipe, again, any);
}

export function commandLineKind(): Kind<readonly string[]> {
  const codes = someSheets().map(({ code }) => code);
  let sandbox: Sandbox | undefined;
  return {
    name: 'command-line',
    inputs: lines(codes),
    meet: async (words) => {
      sandbox ??= openSandbox();
      const { work } = sandbox;
      const given = words.filter((word) => isInside(word, work));
      try {
        await programOf(() => {}).parseAsync(given, { from: 'user' });
      } catch (error) {
        if (error instanceof Refused) error.refusals.map(sentenceOf);
        else if (!(error instanceof CommanderError)) throw error;
      } finally {
        nothingOutside(sandbox);
      }
    },
    show: (words) => JSON.stringify(words),
  };
}
