// What the command line promises for bad input: one clear sentence on standard error, exit code 2, nothing written.
import { mkdirSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { emptyFolder, samewise } from './program.ts';

let cwd = '';
beforeAll(() => {
  cwd = emptyFolder();
  writeFileSync(join(cwd, 'old.pdf'), 'old');
  writeFileSync(join(cwd, 'broken.json'), '{"format": oops}');
  writeFileSync(join(cwd, 'bytes.json'), Buffer.from([0xff, 0xfe, 0x00, 0x80]));
  writeFileSync(join(cwd, 'huge.json'), '');
  // Says that it is so long, and takes no room.
  truncateSync(join(cwd, 'huge.json'), 500_000_000);
  writeFileSync(join(cwd, 'empty.json'), '');
  mkdirSync(join(cwd, 'folder'));
  const stock = { format: 'samewise.stock', version: 1, stickers: [], crayons: [], tools: [] };
  writeFileSync(join(cwd, 'nothing.json'), JSON.stringify(stock));
  writeFileSync(join(cwd, 'pens.json'), JSON.stringify({ ...stock, pens: 3 }));
  const hugeSticker = { colour: 'red', diameterMm: 1e9, count: 1 };
  writeFileSync(join(cwd, 'wide.json'), JSON.stringify({ ...stock, stickers: [hugeSticker] }));
});

const CASES: readonly (readonly [string, RegExp])[] = [
  ['frob', /unknown command 'frob'/],
  ['pack --frob', /unknown option '--frob'/],
  ['pack', /expected an activity .* or a recipe/],
  ['pack --activity', /argument missing/],
  ['pack --activity in-evry-box', /--activity: expected one of .* Did you mean in-every-box\?/],
  ['pack --activity by-key --language xx', /--language: expected one of .*en.* got "xx"/],
  ['ruler --language xx', /--language: expected one of .*en.* got "xx"/],
  ['pack --activity by-key --step 0', /--step: expected 1 to \d+, got 0\. Use 1\./],
  [
    'pack --activity by-key --tasks 12',
    /by-key › tasks: expected at most \d+ tasks on A4 portrait, got 12/,
  ],
  ['pack --activity by-key --print color', /--print: .* Did you mean colour\?/],
  ['pack --activity by-key --colours red', /by-key › response: .*only 1 colour is at hand/],
  ['pack --activity by-key --colours red,bleu', /--colours: .* got "bleu"/],
  ['pack --activity by-key --set entries=300', /--set entries: expected \d to \d, got 300/],
  ['pack --recipe broken.json', /recipe.*: expected JSON/],
  ['pack --recipe bytes.json', /recipe: expected a file .*not text in UTF-8/],
  ['pack --recipe huge.json', /recipe: expected at most \d+ bytes, got 500000000\./],
  ['pack --recipe none.json', /recipe: expected a file .*no such file/],
  ['pack --activity by-key --stock none.json', /stock: expected a file .*no such file/],
  ['pack --activity by-key --stock broken.json', /stock.*: expected JSON/],
  ['pack --activity by-key --stock pens.json', /stock: "pens" is not known here/],
  [
    'pack --activity by-key --stock wide.json',
    /stock › .*diameterMm: expected 1 to 100, got 1000000000/,
  ],
  [
    'pack --activity by-key --seed 1 --set response=sticker --sheets 2 --stock nothing.json',
    /onlyWith: 2 sheets need \d+ stickers of 13 mm \(.*\); the house has none of that\. Add \d+ stickers of 13 mm/,
  ],
  ['pack --activity by-key --out folder', /folder: cannot be written: it is a folder/],
  [
    'pack --activity by-key --out none/pack.pdf',
    /none\/pack\.pdf: cannot be written: there is no such/,
  ],
  [
    'pack --activity by-key --out old.pdf/pack.pdf',
    /cannot be written: a part of its path is a file/,
  ],
  [
    'pack --activity by-key --out /dev/null',
    /\/dev\/null: cannot be written: it is not an ordinary file/,
  ],
  [
    'pack --activity by-key --svg old.pdf',
    /old\.pdf: cannot be written: it is a file, not a folder/,
  ],
  [
    'pack --activity by-key --out old.pdf --json old.pdf',
    /two of --out, --json, --svg and --per-child name the same place/,
  ],
  ['check', /missing required argument 'file'/],
  ['check none.json', /pack: expected a file .*no such file/],
  ['check huge.json', /pack: expected at most \d+ bytes, got 500000000\./],
  ['check broken.json', /pack.*: expected JSON/],
  ['again', /missing required argument 'code'/],
  ['again 3333-3333', /sheet code: "3333-3333" has a wrong, missing or extra character/],
  ['again 2O46', /sheet code › character 2: expected one of .*, got "O"/],
  ['activities by-keys', /activities: expected one of .* Did you mean by-key\?/],
  [
    'schema packs',
    /schema: expected one of pack, recipe, stock, got "packs"\. Did you mean pack\?/,
  ],
];

describe.concurrent('bad input', () => {
  it.each(CASES)('samewise %s', async (line, sentence) => {
    const { code, stdout, stderr } = await samewise(line.split(' '), { cwd });
    expect([code, stdout.toString()], stderr).toEqual([2, '']);
    expect(stderr).toMatch(sentence);
    expect(stderr.trimEnd().split('\n'), stderr).toHaveLength(1);
    expect(stderr).not.toMatch(/undefined|\[object|at file:|Error:/);
  });

  it('left everything as it was', () => {
    expect(readFileSync(join(cwd, 'old.pdf'), 'utf8')).toBe('old');
    expect(readdirSync(cwd).sort()).toEqual([
      'broken.json',
      'bytes.json',
      'empty.json',
      'folder',
      'huge.json',
      'nothing.json',
      'old.pdf',
      'pens.json',
      'wide.json',
    ]);
  });
});
