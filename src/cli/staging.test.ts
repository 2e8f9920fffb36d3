// What writing aside promises: all files take their place together, and a failure leaves everything as it was.
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Refused } from './failure.ts';
import { type Fill, openStaging } from './staging.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'samewise-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const at = (name: string) => join(folder, name);
const read = (name: string) => readFileSync(at(name), 'utf8');
const filled =
  (words: string): Fill =>
  async (write) => {
    for (const character of words) write(Buffer.from(character));
  };
const failing: Fill = async (write) => {
  write(Buffer.from('half'));
  throw new Error('a task is not proven');
};

describe('files written aside', () => {
  it('take their place only when all are ready', async () => {
    writeFileSync(at('old'), 'before');
    const staging = openStaging();
    await staging.write(at('old'), filled('after'));
    await staging.write(at('new'), filled('fresh'));
    expect(read('old')).toBe('before');
    expect(readdirSync(folder)).not.toContain('new');
    staging.commit();
    expect([read('old'), read('new')]).toEqual(['after', 'fresh']);
    expect(readdirSync(folder).sort()).toEqual(['new', 'old']);
  });

  it('leave the old file whole and nothing behind where one fails', async () => {
    writeFileSync(at('old'), 'before');
    const staging = openStaging();
    staging.folder(at('pages'));
    await staging.write(join(at('pages'), 'one'), filled('page'));
    await expect(staging.write(at('old'), failing)).rejects.toThrow('not proven');
    staging.abandon();
    expect(read('old')).toBe('before');
    expect(readdirSync(folder)).toEqual(['old']);
  });

  it('keep a folder that was there, and what else is in it', async () => {
    mkdirSync(at('pages'));
    writeFileSync(join(at('pages'), 'mine'), 'kept');
    const staging = openStaging();
    staging.folder(at('pages'));
    await staging.write(join(at('pages'), 'one'), filled('page'));
    staging.abandon();
    expect(readdirSync(at('pages'))).toEqual(['mine']);
  });

  it('keep the permissions of the file that they replace', async () => {
    writeFileSync(at('old'), 'before');
    chmodSync(at('old'), 0o640);
    const staging = openStaging();
    await staging.write(at('old'), filled('after'));
    staging.commit();
    expect(statSync(at('old')).mode & 0o777).toBe(0o640);
  });

  it('replace what a link points at, not the link', async () => {
    writeFileSync(at('real'), 'before');
    symlinkSync(at('real'), at('link'));
    const staging = openStaging();
    await staging.write(at('link'), filled('after'));
    staging.commit();
    expect(read('real')).toBe('after');
    expect(lstatSync(at('link')).isSymbolicLink()).toBe(true);
  });
});

describe('a place that cannot be written to', () => {
  const cases: readonly (readonly [string, () => string, RegExp])[] = [
    ['a folder', () => folder, /folder/],
    ['a device', () => '/dev/null', /ordinary/],
    ['in a folder that is missing', () => at('none/pack.pdf'), /no such/],
    ['below a file', () => join(at('old'), 'pack.pdf'), /a file, not a folder/],
    ['a link to nothing', () => at('dangling'), /link to nothing/],
  ];
  it.each(cases)('%s is refused with the reason', async (_, path, reason) => {
    writeFileSync(at('old'), 'before');
    symlinkSync(at('nowhere'), at('dangling'));
    const staging = openStaging();
    const failure = await staging.write(path(), filled('x')).catch((error: unknown) => error);
    staging.abandon();
    expect(failure).toBeInstanceOf(Refused);
    expect(failure instanceof Refused && failure.refusals[0]).toMatchObject({
      code: 'unwritable',
      reason: expect.stringMatching(reason),
    });
    expect(readdirSync(folder).sort()).toEqual(['dangling', 'old']);
  });
});
