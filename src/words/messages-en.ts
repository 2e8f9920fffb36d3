// English messages of refusals: where, what was expected, what came, what to do. {at} is the place, {got} what came.

export const MESSAGES = {
  range: '{at}: expected {min} to {max}, got {got}.',
  'range.because': '{at}: expected {min} to {max}, got {got} ({because}).',
  'range.one': '{at}: expected {min}, got {got}.',
  'range.one.because': '{at}: expected {min}, got {got} ({because}).',
  'range.use': 'Use {nearest}.',
  choice: '{at}: expected {choices}, got {got}.',
  'choice.because': '{at}: expected {choices}, got {got} ({because}).',
  'choice.nearest': 'Did you mean {nearest}?',
  // {choices} above is one of these; in them it is a list made by the last.
  'choices.one': '{choices}',
  'choices.some': 'one of {choices}',
  'choices.many': 'one of {count} that are known, such as {choices}',
  'choices.next': '{before}, {next}',
  expected: '{at}: expected {expected}, got {got}.',
  missing: '{at}: expected {expected}, got nothing.',
  unknown: '{at}: {got} is not known here.',
  'unknown.choices': 'Known are {choices}.',
  'unknown.nothing': 'Take it out.',
  // {amount} is such as `2 tasks on A4 portrait`, and in the second `no tasks on A4 portrait`.
  most: '{at}: expected at most {amount}, got {got}.',
  'room.none': '{at}: there is room for {amount}.',
  check:
    '{at}: {got} has a wrong, missing or extra character, or two swapped. Compare it with the code on the sheet.',
  version:
    '{at}: made by version {got}; this program reads {count, plural, one {version} other {versions}} {known}. Get a newer Samewise to read it.',
  proof: '{at}: not proven: {reason}. Nothing was written.',
  pictures:
    '{at}: {count, plural, one {a picture} other {# pictures}} of a family’s own ({ids}) {count, plural, one {is} other {are}} not kept on this device. Nothing is lost: open it on the device on which {count, plural, one {the picture is} other {the pictures are}} kept, or read a backup from there, or a pack or recipe file that holds {count, plural, one {it} other {them}}.',
  unwritable: '{at}: cannot be written: {reason}.',
  unchangeable: '{at}: this change cannot be made: {reason}. Nothing was changed.',
  correction:
    '{at}: a 50 mm line that measures {got} mm cannot be put right here: only {least} to {most} mm can. The print window may be scaling the page: choose “100 %” or “actual size” in the print window, and measure a new print.',
  'correction.paper':
    '{at}: on {paper}, at least {least} mm can be put right, got {got} mm: enlarged further, the page would run over the edge of the paper. Do not correct it; choose “100 %” or “actual size” in the print window, and measure a new print.',
  'storage.denied':
    '{at}: this browser keeps nothing for this page, as in some private windows or with site data blocked. Nothing was saved. Open the page in an ordinary window, or allow it to keep data.',
  'storage.full':
    '{at}: this browser has no room left. This was not saved; what was saved before is still there. Make a backup, free some space on this device, then try again.',
  'storage.blocked':
    '{at}: an older Samewise is still open in another tab or window. Nothing was changed. Close the other one, then try again.',
  'storage.failed':
    '{at}: the browser gave up in the middle, so nothing was changed. Reload the page and try again.',
  'got.text': '"{got}"',
  'got.nothing': 'nothing',
  'got.list': 'a list of {count}',
  'got.object': 'an object',
  'got.number': 'number {number}',
  // What a pack needs, what the house has of it, and what would do.
  'house.needs':
    '{at}: {sheets, plural, one {{sheets} sheet needs} other {{sheets} sheets need}} {needs}; the house has {has}.',
  'house.needs.first':
    '{at}: the first {sheets} of {of} sheets alone need {needs}; the house has {has}.',
  'house.none': 'none of that',
  'house.add': 'Add {add}.',
  'house.add.least': 'Add at least {add}.',
  'house.fewer':
    'Ask for {possible, plural, one {{possible} sheet} other {{possible} sheets}}, or add {add}.',
  'house.fewer.least':
    'Ask for {possible, plural, one {{possible} sheet} other {{possible} sheets}}, or add at least {add}.',
  // {each} is such as `36 red, 18 blue`.
  'thing.stickers':
    '{count, plural, one {{count} sticker} other {{count} stickers}} of {sizeMm} mm ({each})',
  'thing.sticker': '{count} {colour}',
  'thing.crayons': '{count, plural, one {a {colours} crayon} other {crayons in {colours}}}',
  'thing.pencil': 'a pencil',
  'thing.scissors': 'scissors with round ends',
  'thing.glue': 'a glue stick',
  'thing.counters': 'small counters',
  'thing.pockets': 'wipe-clean pockets',
  'thing.paper': '{paper, select, Letter {US Letter} other {{paper}}} paper',
} as const;
