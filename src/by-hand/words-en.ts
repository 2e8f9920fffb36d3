// English words of guides and half-made sheets.
import { colourName } from '../figures/index.ts';
import type { CopyReason, Fold, Pen, Placement } from './parts.ts';
import type { ByHandWords } from './words.ts';

const NBSP = '\u00a0';

function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

function listed(names: readonly string[]): string {
  const last = names[names.length - 1] ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

function penName(pen: Pen): string {
  return pen === 'own' ? 'coloured' : colourName(pen, 'en');
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const COPIED: Readonly<Record<CopyReason, string>> = {
  curves: 'This sheet has curves or outlines that no one draws freely.',
  overlapping: 'On this sheet things lie over one another.',
  crowded: 'This sheet holds more than can be placed with a ruler.',
};

const PARTS: Readonly<Record<number, string>> = { 2: 'in half', 3: 'in three', 4: 'in four' };

function foldWords(folds: readonly Fold[]): string {
  const ways = (['down', 'across'] as const).flatMap((direction) => {
    const of = folds.find((fold) => fold.direction === direction)?.of;
    if (of === undefined) return [];
    const to =
      direction === 'down' ? 'bottom edge up to the top edge' : 'right edge over to the left edge';
    const how = of === 3 ? 'all parts alike' : to;
    return [
      `${PARTS[of] ?? ''}, the creases ${direction === 'down' ? 'from side to side' : 'from top to bottom'} (${how})`,
    ];
  });
  return `Fold the page ${ways.join(', then ')}. Open it again: each part is a box.`;
}

function size({ widthMm, heightMm }: Placement): string {
  return Math.abs(widthMm - heightMm) <= 1
    ? `${Math.max(widthMm, heightMm)}${NBSP}mm`
    : `${widthMm}${NBSP}mm wide, ${heightMm}${NBSP}mm high`;
}

function where({ box }: Placement, isFolded: boolean): string {
  if (box === undefined) return '';
  return isFolded ? ` (part ${box})` : ` (box ${box})`;
}

function place(placement: Placement, isFolded: boolean): string {
  if (placement.inside !== undefined)
    return `inside number ${placement.inside}, as the picture shows`;
  if (placement.isPatch) {
    const [left, top] = [
      placement.xMm - placement.widthMm / 2,
      placement.yMm - placement.heightMm / 2,
    ];
    return `its upper left corner ${left} across, ${top} down`;
  }
  return `${placement.xMm}${NBSP}across, ${placement.yMm}${NBSP}down${where(placement, isFolded)}`;
}

export const ENGLISH: ByHandWords = {
  title: (activity, step) => `Make it by hand: ${activity}, step ${step}`,
  documentTitle: (sheets) => `Samewise: ${counted(sheets, 'sheet')} to make by hand`,
  halfMadeTitle: (sheets) => `Samewise: ${counted(sheets, 'half-made sheet')}`,
  continued: 'Make it by hand, continued',
  takes: (minutes) => `About ${counted(Math.max(1, Math.round(minutes)), 'minute')}.`,
  layOut: 'Lay out',
  paper: (name, isLying) => `one blank sheet of ${name} paper, ${isLying ? 'lying' : 'upright'}`,
  ruler: 'a ruler and a pencil',
  pens: (pens) =>
    pens.length === 1
      ? `a ${penName(pens[0] ?? 'black')} pen${pens[0] === 'own' ? ' or more' : ''}`
      : `pens: ${listed(pens.map((pen) => (pen === 'own' ? 'colours for the pictures' : penName(pen))))}`,
  stickers: (count, colour, diameterMm) =>
    `${counted(count, `${penName(colour)} sticker`)}, ${diameterMm}${NBSP}mm`,
  forTheChild: (things) => `For the child, besides: ${listed(things)}.`,
  childStickers: (count, colour, diameterMm) =>
    `${counted(count, `${penName(colour)} sticker`)} of ${diameterMm}${NBSP}mm`,
  childCrayons: (colours) =>
    colours.length === 1
      ? `a ${penName(colours[0] ?? 'own')} crayon`
      : `crayons in ${listed(colours.map(penName))}`,
  childPencil: 'a pencil',
  childScissors: 'scissors with round ends',
  childGlue: 'a glue stick',
  howItLooks: 'How it will look',
  howToRead:
    'The numbers are those of the list. “40 across, 150 down” is 40 mm from the left edge of the page and 150 mm from its top edge: there the middle of the thing goes, or the upper left corner of a box.',
  whyCopied: (reason) =>
    `${COPIED[reason]} Copy the last page square by square in the colours that it shows, or trace it from a screen that shows it at true size under the paper. Then go through the list.`,
  someCopied: (count) =>
    `${count === 1 ? 'One picture or pattern is' : `${count} pictures or patterns are`} too rich to draw from words: copy them square by square from the last page, or trace them from a screen that shows it at true size under the paper.`,
  foldFirst: 'Fold',
  fold: foldWords,
  rule: 'Rule with a black pen',
  box: ({ number, leftMm, topMm, widthMm, heightMm, isDashed }) =>
    `${isDashed ? 'dashed box' : 'box'} ${number}: ${leftMm}${NBSP}across, ${topMm}${NBSP}down, ${widthMm}${NBSP}wide, ${heightMm}${NBSP}high`,
  line: ({ from, to, isDashed }) =>
    `${isDashed ? 'dashed line' : 'line'}: from ${from[0]}${NBSP}across, ${from[1]}${NBSP}down, to ${to[0]}${NBSP}across, ${to[1]}${NBSP}down`,
  stickerHeading: (count, colour, diameterMm) =>
    `Stick on ${count} ${penName(colour)}, ${diameterMm}${NBSP}mm`,
  penHeading: (count, pen) =>
    pen === 'own' ? `Draw ${count} in colours` : `Draw ${count} with the ${penName(pen)} pen`,
  stickerPlace: place,
  drawnPlace: (placement, isFolded) =>
    `${placement.name}, ${size(placement)}${placement.isCopied ? ', copied' : ''}: ${place(placement, isFolded)}`,
  copiedThing: (placement) =>
    placement.isSticker ? `sticker, ${size(placement)}` : `${placement.name}, ${size(placement)}`,
  codeToWrite: (code) =>
    `Write ${code} small at the foot of the page: with it the sheet is recorded and made again.`,
  last: 'At the end',
  stickFirst: 'Stick these on first',
  stickFirstHow:
    'Each empty circle on a sheet says its colour. One sheet of stickers after the other is quickest.',
  noStickers: 'Nothing to stick on: the sheet is printed whole.',
  sheetNumber: (number, code) => `Sheet ${number} · ${code}`,
  answers: 'Answers',
  grid: 'To copy square by square',
  gridAdvice: `Each square is 5${NBSP}mm, each strong line 50${NBSP}mm from the next. Printed or shown at true size, it can be traced.`,
  circleFor: (colour) => `empty circle for a ${colour} sticker`,
  ring: 'empty circle',
  dashedRing: 'dashed circle',
  dot: 'small dot',
  patch: (colour) => `${capital(colour === '' ? 'black' : colour)} patch`.toLowerCase(),
  written: (words) => `the word “${words}”`,
  stickersAcross: 'mm across: the largest stickers that find room on this sheet',
  smallerStickers: 'take smaller stickers, or fewer tasks or figures',
  onlyPrinted: 'printed sheets, since what is cut out comes from the printer',
};
