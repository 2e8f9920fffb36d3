// The sheet that a code stands for: as a recipe of its own, and as it is to be shown.
import { type ActivityId, activityOf } from '../../activities/index.ts';
import { accept, type Result } from '../../base/index.ts';
import { isolated } from '../../page/index.ts';
import { openPackText, readCode } from '../../sheets/index.ts';
import type { Entries } from '../recipe/entries.ts';
import { languageNow } from '../speaking/language-now.ts';
import { changedText } from './changed-texts.ts';
import type { FiledPackShown, Shown } from './protocol.ts';
import { show } from './show.ts';

/** A pack of the one sheet that the code stands for. Refuses a code that cannot be read. */
export function entriesOfCode(code: string): Result<Entries> {
  const read = readCode(code);
  if (!read.ok) return read;
  const { activity, step, values, seed, tasks, page, print, ...extras } = read.value;
  const { colours, pictures, letters, hand, size, ink, edits } = extras;
  return accept({
    activity,
    step,
    changes: values,
    tasks,
    sheets: 1,
    seed,
    first: seed,
    paper: page.paper,
    orientation: page.orientation,
    print,
    ...(edits === undefined ? {} : { changed: [changedText(1, code.trim().toUpperCase())] }),
    ...(colours === undefined ? {} : { colours }),
    ...(pictures === undefined ? {} : { pictures: pictures.ids }),
    ...(pictures?.alone ? { onlyOwn: true } : {}),
    ...(letters === undefined ? {} : { letters }),
    ...(hand === undefined ? {} : { hand }),
    ...(size === undefined ? {} : { size }),
    ...(ink === undefined ? {} : { ink }),
    ...(page.margin === undefined ? {} : { margin: page.margin }),
  });
}

/** The sheets of a pack file's text, with the names of their activities, and the pictures that came with them. */
export function filedPack(text: string): Result<FiledPackShown> {
  const read = openPackText(text);
  if (!read.ok) return read;
  const { sheets, pictures } = read.value;
  const named = (id: ActivityId) => activityOf(id).words[languageNow()].name;
  return accept({
    sheets: sheets.map(({ child, ...sheet }) => ({
      ...sheet,
      name: named(sheet.activity),
      ...(child === undefined ? {} : { child: isolated(child) }),
    })),
    pictures,
  });
}

const ONE_PAGE = { wanted: 1, leaf: 1 };

/** Several such pictures can stand in one document. */
export function sheetOfCode(code: string): Result<Shown> {
  const entries = entriesOfCode(code);
  return entries.ok
    ? show({ entries: entries.value }, 'sheet', ONE_PAGE, { idPrefix: `sheet-${code}` })
    : entries;
}
