// What `samewise year` promises a setting that makes its packs for a whole year.
import { spawnSync } from 'node:child_process';
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { pathOnTheWay } from '../../src/cli/left-behind.ts';
import { THIS_MACHINE } from '../../src/cli/processes.ts';
import { backupText, type Entry } from '../../src/records/index.ts';
import { childEntry, idAt, resultEntry } from '../record-entries.ts';
import { emptyFolder, samewise } from './program.ts';
import { filesUnder } from './year-files.ts';

/** Each run measures ladders first: seconds of processor time, which a busy machine makes minutes of. */
vi.setConfig({ testTimeout: 900_000, hookTimeout: 900_000 });

const LIST = 'Wren, 2022-05\nMoss; step 3\nFern\n';
const words = (line: string) => line.split(' ');
/** One worker measures the ladders once; the tests about several ask for them. */
const YEAR = words(
  'year --list list.txt --from 2026-09-07 --weeks 2 --sheets 2 --workers 1 --out year',
);

function folderWith(list: string): string {
  const cwd = emptyFolder();
  writeFileSync(join(cwd, 'list.txt'), list);
  return cwd;
}

/** A file as a run leaves it half-written that was killed: named by a process that has ended. */
function leftBehindIn(folder: string): string {
  const ended = spawnSync(process.execPath, ['--version']).pid;
  return pathOnTheWay(folder).replace(`-${process.pid}-`, `-${ended}-`);
}

describe('a year for a list of children', () => {
  let cwd = '';
  beforeAll(async () => {
    cwd = folderWith(LIST);
    const made = await samewise([...YEAR, '--files', 'json,pdf', '--workers', '2'], { cwd });
    expect(made.code, made.stderr).toBe(0);
    expect(made.stderr).toContain('made 6 weeks with 12 sheets, all proven, for 3 children');
  });

  it('has a folder for each child with its plan, the files of each week and their sums, and nothing else', () => {
    const packs = ['week-01.json', 'week-01.pdf', 'week-02.json', 'week-02.pdf'];
    const files = [...packs, 'year.json', 'year.sha256'];
    expect(readdirSync(cwd).sort()).toEqual(['list.txt', 'year']);
    const year = join(cwd, 'year');
    expect(readdirSync(year).sort()).toEqual(['001-Wren', '002-Moss', '003-Fern']);
    for (const child of readdirSync(year)) {
      expect(readdirSync(join(year, child)).sort()).toEqual(files);
      expect(
        readFileSync(join(year, child, 'week-02.pdf'))
          .subarray(0, 5)
          .toString(),
      ).toBe('%PDF-');
    }
  });

  it('has packs of the sheets that its plan names, with the child’s name, proven again by `check`', async () => {
    const folder = join(cwd, 'year', '002-Moss');
    const plan = JSON.parse(readFileSync(join(folder, 'year.json'), 'utf8'));
    const { sheets } = JSON.parse(readFileSync(join(folder, 'week-02.json'), 'utf8'));
    const codes = (some: readonly { code: string }[]) => some.map(({ code }) => code);
    expect(codes(sheets)).toEqual(codes(plan.weeks[1].sheets));
    for (const { child } of sheets) expect(child).toEqual({ number: 2, name: 'Moss' });
    const check = await samewise(['check', join(folder, 'week-02.json')], { cwd });
    expect(check.code, check.stderr).toBe(0);
  });

  it('has the same bytes with one worker, and the kinds of files in another order', async () => {
    const other = folderWith(LIST);
    const made = await samewise([...YEAR, '--files', 'pdf,json'], { cwd: other });
    expect(made.code, made.stderr).toBe(0);
    expect(filesUnder(join(other, 'year'))).toEqual(filesUnder(join(cwd, 'year')));
  });

  it('goes on where files are missing or left half-written, and leaves alone what is there', async () => {
    const before = filesUnder(join(cwd, 'year'));
    const [missing, there] = ['002-Moss/week-01.pdf', '001-Wren/week-01.pdf'];
    const { mtimeMs } = statSync(join(cwd, 'year', there));
    rmSync(join(cwd, 'year', missing));
    writeFileSync(leftBehindIn(join(cwd, 'year', '002-Moss')), '%PDF-1.7 and then');
    const made = await samewise([...YEAR, '--files', 'pdf,json'], { cwd });
    expect(made.code, made.stderr).toBe(0);
    expect(made.stderr).toContain('made 1 week with 2 sheets');
    expect(made.stderr).toContain('5 weeks were there before');
    expect(filesUnder(join(cwd, 'year'))).toEqual(before);
    expect(statSync(join(cwd, 'year', there)).mtimeMs).toBe(mtimeMs);
  });

  /** The year as it stands, in a folder of its own. */
  function copied(): string {
    const copy = emptyFolder();
    cpSync(cwd, copy, { recursive: true });
    return copy;
  }

  it('keeps its weeks when more are asked for', async () => {
    const copy = copied();
    const more = [...YEAR, '--files', 'pdf,json', '--weeks', '3'];
    const longer = await samewise(more, { cwd: copy });
    expect(longer.code, longer.stderr).toBe(0);
    expect(longer.stderr).toContain('made 3 weeks with 6 sheets');
    expect(longer.stderr).toContain('6 weeks were there before');
    const [before, after] = [filesUnder(join(cwd, 'year')), filesUnder(join(copy, 'year'))];
    const weeks = Object.keys(before).filter((name) => name.includes('week-'));
    expect(weeks).toHaveLength(12);
    for (const name of weeks) expect(after[name], name).toBe(before[name]);
  });

  it('is told of and left as it is where other options are asked for', async () => {
    const copy = copied();
    const other = await samewise([...YEAR, '--print', 'grey'], { cwd: copy });
    expect(other.code).toBe(2);
    for (const child of ['1 (Wren)', '2 (Moss)', '3 (Fern)']) {
      expect(other.stderr).toContain(`child ${child}, plan of the year: it was made of other`);
    }
    expect(other.stderr).toContain('--anew');
    expect(filesUnder(copy)).toEqual(filesUnder(cwd));
  });

  it('is made again with --anew where its plan is of another version, damaged or gone, and told of without', async () => {
    const copy = copied();
    const plan = (child: string) => join(copy, 'year', child, 'year.json');
    const text = readFileSync(plan('001-Wren'), 'utf8');
    const stamp = /"stamp":"[0-9a-f]{64}"/;
    writeFileSync(plan('001-Wren'), text.replace(stamp, `"stamp":"${'0'.repeat(64)}"`));
    writeFileSync(join(copy, 'year', '001-Wren', 'week-01.pdf'), 'of another version');
    writeFileSync(plan('002-Moss'), Uint8Array.of(0xff, 0));
    rmSync(plan('003-Fern'));
    const asked = [...YEAR, '--files', 'pdf,json'];
    const told = await samewise(asked, { cwd: copy });
    expect(told.code).toBe(2);
    for (const child of ['1 (Wren)', '2 (Moss)', '3 (Fern)']) {
      expect(told.stderr).toContain(`child ${child}, plan of the year`);
    }
    const anew = await samewise([...asked, '--anew'], { cwd: copy });
    expect(anew.code, anew.stderr).toBe(0);
    expect(filesUnder(join(copy, 'year'))).toEqual(filesUnder(join(cwd, 'year')));
  });

  it('leaves alone and tells each pack that somebody changed or put there, and makes what is missing', async () => {
    const copy = copied();
    const pack = (child: string, name: string) => join(copy, 'year', child, name);
    appendFileSync(pack('001-Wren', 'week-01.pdf'), '% a note');
    cpSync(pack('002-Moss', 'week-01.json'), pack('002-Moss', 'week-02.json'));
    rmSync(pack('002-Moss', 'week-02.pdf'));
    rmSync(pack('003-Fern', 'week-02.pdf'));
    const changed = filesUnder(join(copy, 'year'));
    const asked = [...YEAR, '--files', 'pdf,json'];
    const told = await samewise(asked, { cwd: copy });
    expect(told.code).toBe(2);
    for (const place of ['child 1 (Wren), week 1', 'child 2 (Moss), week 2']) {
      expect(told.stderr).toContain(`samewise: ${place}: it is not as it was made`);
    }
    expect(told.stderr).toContain('2 weeks were left as they stood');
    expect(told.stderr).not.toContain('run it again');
    const whole = filesUnder(join(cwd, 'year'));
    const fern = '003-Fern/week-02.pdf';
    expect(filesUnder(join(copy, 'year'))).toEqual({ ...changed, [fern]: whole[fern] });
    rmSync(pack('001-Wren', 'week-01.pdf'));
    const anew = await samewise([...asked, '--anew'], { cwd: copy });
    expect(anew.code, anew.stderr).toBe(0);
    expect(anew.stderr).toContain('made 2 weeks with 4 sheets');
    expect(filesUnder(join(copy, 'year'))).toEqual(whole);
  });

  it('is refused to a second run while a first one writes there, and not after that was killed', async () => {
    const copy = copied();
    const taken = (pid: number | undefined) =>
      join(copy, 'year', `.samewise-${THIS_MACHINE}-${pid}.run`);
    writeFileSync(taken(process.pid), '');
    const asked = [...YEAR, '--files', 'pdf,json'];
    const second = await samewise(asked, { cwd: copy });
    expect(second.code).toBe(2);
    expect(second.stderr).toMatch(
      /^samewise: year: cannot be written: another run of .*\.run\.\n$/,
    );
    renameSync(taken(process.pid), taken(spawnSync(process.execPath, ['--version']).pid));
    const third = await samewise(asked, { cwd: copy });
    expect(third.code, third.stderr).toBe(0);
    expect(filesUnder(join(copy, 'year'))).toEqual(filesUnder(join(cwd, 'year')));
  });

  it('tells a unit that fails with child and week, and makes the others', async () => {
    const copy = copied();
    for (const week of ['01', '02']) rmSync(join(copy, 'year', '001-Wren', `week-${week}.json`));
    mkdirSync(join(copy, 'year', '001-Wren', 'week-02.json'));
    rmSync(join(copy, 'year', '002-Moss'), { recursive: true });
    writeFileSync(join(copy, 'year', '002-Moss'), 'a file where the folder of a child should be');
    const made = await samewise([...YEAR, '--files', 'pdf,json'], { cwd: copy });
    expect(made.code).toBe(2);
    expect(made.stderr).toMatch(/samewise: child 1 \(Wren\), week 2: .*it is a folder/);
    expect(made.stderr).toMatch(/samewise: child 2 \(Moss\), plan of the year: .*not a folder/);
    expect(made.stderr).not.toContain('Fern');
    expect(made.stderr).toContain('made 1 week with 2 sheets');
    expect(existsSync(join(copy, 'year', '001-Wren', 'week-01.json'))).toBe(true);
  });
});

describe('a disk that is full', () => {
  it('leaves no piece of a file where the disk is full', async () => {
    const cwd = folderWith('Wren\n');
    const made = await samewise(YEAR, { cwd, diskKb: 16 });
    expect(made.code).toBe(2);
    expect(made.stderr).toMatch(/child 1 \(Wren\), week 1: .*too big/);
    expect(readdirSync(join(cwd, 'year', '001-Wren'))).toEqual(['year.json']);
  });
});

describe('names', () => {
  const NAMES = [
    '../../away',
    '/etc/passwd',
    '..',
    'C:\\con',
    'x'.repeat(200),
    '子'.repeat(200),
    'ليلى',
    '🌿',
    'Wren',
    'wren',
    'Wren',
    'O’Brien, Zoë, 2022-05',
  ];

  it('of every kind make folders inside the folder, one for each child', async () => {
    const cwd = folderWith(NAMES.join('\n'));
    const week = [...YEAR, '--files', 'json', '--weeks', '1', '--sheets', '1'];
    const made = await samewise(week, { cwd });
    expect(made.code, made.stderr).toBe(0);
    expect(readdirSync(cwd).sort()).toEqual(['list.txt', 'year']);
    const folders = readdirSync(join(cwd, 'year')).sort();
    expect(folders).toEqual([
      '001-away',
      '002-etc-passwd',
      '003',
      '004-C-con',
      `005-${'x'.repeat(40)}`,
      `006-${'子'.repeat(40)}`,
      '007-ليلى',
      '008',
      '009-Wren',
      '010-wren',
      '011-Wren',
      '012-O-Brien-Zoë',
    ]);
    const codes = folders.map((folder) => {
      const text = readFileSync(join(cwd, 'year', folder, 'week-01.json'), 'utf8');
      return JSON.parse(text).sheets[0].code;
    });
    expect(new Set(codes).size).toBe(NAMES.length);
  });
});

describe('a year for the children of a backup', () => {
  const entries = (more: readonly Entry[] = []): readonly Entry[] => [
    childEntry(1, 1, { nickname: 'Wren', birthMonth: '2022-05' }),
    childEntry(2, 2, { nickname: 'Moss', writingHand: 'left' }),
    resultEntry(3, 1),
    ...more,
  ];

  function writeBackup(cwd: string, more: readonly Entry[] = []): void {
    const text = backupText(entries(more));
    if (!text.ok) throw new Error('no backup');
    writeFileSync(join(cwd, 'backup.json'), text.value);
  }

  const BACKUP = words(
    'year --records backup.json --from 2026-09-07 --weeks 1 --sheets 2 --files json --workers 1 --out year',
  );

  it('begins with what each got so far, and tells of those whose records grew', async () => {
    const cwd = emptyFolder();
    writeBackup(cwd);
    const made = await samewise(BACKUP, { cwd });
    expect(made.code, made.stderr).toBe(0);
    expect(readdirSync(join(cwd, 'year')).sort()).toEqual(['001-Wren', '002-Moss']);
    writeBackup(cwd, [resultEntry(4, 2, { day: '2026-03-10' })]);
    const again = await samewise(BACKUP, { cwd });
    expect(again.code).toBe(2);
    expect(again.stderr).toContain('child 2 (Moss), plan of the year');
    expect(again.stderr).not.toContain('Wren');
  });

  it('says that a count of what is in the house is not regarded', async () => {
    const cwd = emptyFolder();
    const count = { stickers: [], crayons: ['red'], tools: [] } as const;
    writeBackup(cwd, [{ id: idAt(5), at: 5, kind: 'stock', ...count }]);
    const made = await samewise(BACKUP, { cwd });
    expect(made.code, made.stderr).toBe(0);
    expect(made.stderr).toContain('the count of what is in the house is not regarded');
  });
});

describe('what no year can be made of', () => {
  it.each([
    ['neither records nor a list', words('year --from 2026-09-07 --out year'), 'Wren'],
    ['both', [...YEAR, '--records', 'list.txt'], 'Wren'],
    ['no folder', words('year --list list.txt --from 2026-09-07'), 'Wren'],
    ['no day', words('year --list list.txt --out year'), 'Wren'],
    ['a day that there is not', [...YEAR, '--from', '2026-02-30'], 'Wren'],
    ['a list that is not there', [...YEAR, '--list', 'none.txt'], 'Wren'],
    ['a list of nobody', YEAR, '# nobody\n\n'],
    ['a line without a name', YEAR, 'Wren\n, 2022-05\n'],
    ['a line that says neither a month nor a step', YEAR, 'Wren\nMoss, 4 years\n'],
    ['a month that there is not', YEAR, 'Wren, 2022-13'],
    ['a name of more than 200 characters', YEAR, 'x'.repeat(201)],
    ['more than 500 children', YEAR, 'x\n'.repeat(501)],
    ['weeks beyond a year', [...YEAR, '--weeks', '54'], 'Wren'],
    ['more sheets than a week holds', [...YEAR, '--sheets', '11'], 'Wren'],
    ['no worker', [...YEAR, '--workers', '0'], 'Wren'],
    ['a kind of file that there is not', [...YEAR, '--files', 'svg'], 'Wren'],
  ])('is refused in sentences: %s; nothing is written', async (_, asked, list) => {
    const cwd = folderWith(list);
    const made = await samewise(asked, { cwd });
    expect(made.code).toBe(2);
    expect(made.stderr).toMatch(/^(samewise: .*\.\n)+$/);
    expect(readdirSync(cwd)).toEqual(['list.txt']);
  });
});
