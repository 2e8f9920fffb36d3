// Writes the outlines of the letters of other scripts from their fonts; run by hand after a change: npm install
// @fontsource/noto-sans@5.3.0 @fontsource/noto-sans-devanagari@5.3.0 @fontsource/noto-sans-arabic@5.3.0
// in an empty folder, then node scripts/make-script-letters.mjs <that folder>
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import * as fontkit from 'fontkit';

const TARGET = new URL('../src/figures/script-letters.generated.json', import.meta.url);
const ANDIKA = new URL('../assets/fonts/Andika-Bold.ttf', import.meta.url);
const folder = join(resolve(process.argv[2] ?? '.'), 'node_modules/@fontsource');
const notoOf = (name, subset) => join(folder, name, 'files', `${name}-${subset}-700-normal.woff`);

/** Numbers in the table are whole thousandths of the cell. */
const UNITS = 1000;
/** Farthest ink from the middle of the cell, in cell sides: inside at every turn. */
const REACH = 0.49;
/** Height of a capital in cell sides where the script has them: as for Latin. */
const CAP_HEIGHT_SHARE = 0.575;

/**
 * Alphabets in their own order. Pools of one entry share one scale; `centred` letters no baseline. Pools of `later` came
 * after sheets were printed: what they add takes the scale of the others and changes none of them.
 */
const SCRIPTS = [
  { font: ANDIKA, pools: { 'cyrillic-capitals': 'АБВГДЕЁЖЗИЙКЛМНОПРСТУФХЦЧШЩЪЫЬЭЮЯ' } },
  { font: ANDIKA, pools: { 'cyrillic-small': 'абвгдеёжзийклмнопрстуфхцчшщъыьэюя' } },
  {
    font: notoOf('noto-sans', 'greek'),
    pools: {
      'greek-capitals': 'ΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩ',
      'greek-small': 'αβγδεζηθικλμνξοπρστυφχψω',
    },
  },
  {
    font: notoOf('noto-sans-devanagari', 'devanagari'),
    pools: { 'devanagari-letters': 'अआइईउऊएऐओऔकखगघङचछजझञटठडढणतथदधनपफबभमयरलवशषसह' },
    later: { 'devanagari-varnamala': 'अआइईउऊऋएऐओऔकखगघङचछजझञटठडढणतथदधनपफबभमयरलवशषसह' },
  },
  {
    font: notoOf('noto-sans-arabic', 'arabic'),
    pools: { 'arabic-letters': 'ابتثجحخدذرزسشصضطظعغفقكلمنهوي' },
    later: { 'arabic-letters-with-hamza': 'ءآأؤإئابةتثجحخدذرزسشصضطظعغفقكلمنهوىي' },
    centred: true,
  },
  {
    font: notoOf('noto-sans-devanagari', 'devanagari'),
    pools: {},
    later: { 'devanagari-numerals': '०१२३४५६७८९' },
  },
  {
    font: notoOf('noto-sans-arabic', 'arabic'),
    pools: {},
    later: { 'arabic-indic-numerals': '٠١٢٣٤٥٦٧٨٩' },
  },
];

/** The outline of one letter standing alone, shaped by the font's own rules, in font units, y down. */
function commandsOf(font, character) {
  if (!font.hasGlyphForCodePoint(character.codePointAt(0))) {
    throw new Error(`make-script-letters › ${font.fullName}: expected ${character}, got no glyph`);
  }
  const run = font.layout(character);
  let pen = 0;
  return run.glyphs.flatMap((glyph, index) => {
    const { xOffset, yOffset, xAdvance } = run.positions[index];
    const [dx, dy] = [pen + xOffset, yOffset];
    pen += xAdvance;
    return glyph.path.commands.map(({ command, args }) => ({
      command,
      args: args.map((value, at) => (at % 2 === 0 ? value + dx : -(value + dy))),
    }));
  });
}

/** Ends of lines and curves, with their control points: a little more than the ink. */
function pointsOf(commands) {
  return commands.flatMap(({ args }) =>
    Array.from({ length: args.length / 2 }, (_, at) => [args[2 * at], args[2 * at + 1]]),
  );
}

function boundsOf(commands) {
  const points = pointsOf(commands);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
}

const LETTERS = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
};

function textOf(commands, [x, y], scale) {
  return commands
    .map(({ command, args }) => {
      const shares = args.map((value, at) => (value - (at % 2 === 0 ? x : y)) * scale * UNITS);
      return LETTERS[command] + shares.map(Math.round).join(' ');
    })
    .join('');
}

function lettersOf({ font: file, pools, later = {}, centred = false }) {
  const font = fontkit.create(readFileSync(file));
  const charactersOf = (some) => [...Object.values(some).join('')];
  const characters = [...new Set([...charactersOf(pools), ...charactersOf(later)])];
  const letters = characters.map((character) => {
    const commands = commandsOf(font, character);
    return { character, commands, bounds: boundsOf(commands) };
  });
  const first = charactersOf(pools);
  const ruling = letters.filter(({ character }) => first.length === 0 || first.includes(character));
  const top = Math.min(...ruling.map(({ bounds }) => bounds[2]));
  const bottom = Math.max(...ruling.map(({ bounds }) => bounds[3]));
  const placed = letters.map((letter) => {
    const [left, right, up, down] = letter.bounds;
    return {
      ...letter,
      middle: [(left + right) / 2, centred ? (up + down) / 2 : (top + bottom) / 2],
    };
  });
  const reachOf = ({ commands, middle: [x, y] }) =>
    Math.max(...pointsOf(commands).map(([px, py]) => Math.hypot(px - x, py - y)));
  const reaches = placed.slice(0, ruling.length).map(reachOf);
  const scale = Math.min(CAP_HEIGHT_SHARE / font.capHeight, REACH / Math.max(...reaches));
  const outside = placed.find((letter) => reachOf(letter) * scale > 0.5);
  if (outside) {
    throw new Error(`make-script-letters › ${outside.character}: expected it inside its cell`);
  }
  process.stdout.write(`${font.fullName}: capitals ${(scale * font.capHeight).toFixed(3)}\n`);
  return {
    source: `${font.fullName}, ${font.version}`,
    entries: placed.map(({ character, commands, middle }) => [
      character,
      textOf(commands, middle, scale),
    ]),
  };
}

const made = SCRIPTS.map(lettersOf);
const sources = [...new Set(made.map(({ source }) => source))];
const table = {
  source: `Outlines of ${sources.join('; ')}; SIL Open Font License 1.1`,
  units: UNITS,
  pools: Object.assign({}, ...SCRIPTS.map(({ pools }) => pools)),
  later: Object.assign({}, ...SCRIPTS.map(({ later }) => later)),
  letters: Object.fromEntries(made.flatMap(({ entries }) => entries)),
};
writeFileSync(TARGET, `${JSON.stringify(table, null, 1)}\n`);
