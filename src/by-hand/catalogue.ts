// The words of guides and half-made sheets, in each language.
import { WORDINGS } from '../activities/index.ts';
import { colourName } from '../figures/index.ts';
import { inEachLanguage, type Language, type Say, sayIn } from '../languages/index.ts';
import { codeIn } from '../page/index.ts';
import { MESSAGES } from './messages-en.ts';
import type { Direction, Fold, Pen, Placement, RuledBox, RuledLine } from './parts.ts';
import type { ByHandWords } from './words.ts';

type SayByHand = Say<typeof MESSAGES>;

const WORDS: Readonly<Record<Language, ByHandWords>> = inEachLanguage(wordsIn);

export function byHandWords(language: Language): ByHandWords {
  return WORDS[language];
}

function wordsIn(language: Language): ByHandWords {
  const say = sayIn(language, 'by-hand', MESSAGES);
  const { list } = WORDINGS[language];
  const penOf = (pen: Pen) => ({
    pen,
    colour: pen === 'own' ? say('pen.coloured') : colourName(pen, language),
  });
  const coloursOf = (colours: readonly Pen[]) => list(colours.map((pen) => penOf(pen).colour));
  return {
    ...headings(say),
    ...steps(say),
    ...names(say),
    title: (activity, step) => say('title', { activity, step }),
    documentTitle: (sheets) => say('title.guides', { sheets }),
    halfMadeTitle: (sheets) => say('title.halfMade', { sheets }),
    takes: (minutes) => say('takes', { minutes: Math.max(1, Math.round(minutes)) }),
    paper: (name, isLying) => say(isLying ? 'paper.lying' : 'paper.upright', { name }),
    pens: (pens) => {
      const [first = 'black', ...others] = pens;
      if (others.length === 0) return say('pens.one', penOf(first));
      return say('pens.many', { pens: list(pens.map((pen) => say('pens.each', penOf(pen)))) });
    },
    stickers: (count, colour, diameterMm) =>
      say('stickers', { count, ...penOf(colour), diameterMm }),
    forTheChild: (things) => say('child', { things: list(things) }),
    childStickers: (count, colour, diameterMm) =>
      say('child.stickers', { count, ...penOf(colour), diameterMm }),
    childCrayons: (colours) =>
      say('child.crayons', { count: colours.length, colours: coloursOf(colours) }),
    whyCopied: (reason) => say(`copied.${reason}`, { how: say('copied.how') }),
    someCopied: (count) => say('copied.some', { count }),
    stickerHeading: (count, colour, diameterMm) =>
      say('heading.stickers', { count, ...penOf(colour), diameterMm }),
    penHeading: (count, pen) => say('heading.pen', { count, ...penOf(pen) }),
    codeToWrite: (code) => say('code', { code: codeIn(language, code) }),
    sheetNumber: (number, code) => say('sheet', { number, code: codeIn(language, code) }),
  };
}

/** What is always said alike. */
function headings(say: SayByHand) {
  return {
    continued: say('continued'),
    layOut: say('layOut'),
    ruler: say('ruler'),
    childTools: {
      pencil: say('child.pencil'),
      scissors: say('child.scissors'),
      glue: say('child.glue'),
      counters: say('child.counters'),
      pockets: say('child.pockets'),
    },
    howItLooks: say('howItLooks'),
    howToRead: say('howToRead'),
    foldFirst: say('fold'),
    rule: say('rule'),
    last: say('last'),
    stickFirst: say('stickFirst'),
    stickFirstHow: say('stickFirst.how'),
    noStickers: say('stickFirst.none'),
    answers: say('answers'),
    grid: say('grid'),
    gridAdvice: say('grid.advice'),
  };
}

/** Each step of the list. */
function steps(say: SayByHand) {
  return {
    fold: (folds: readonly Fold[]) => foldText(say, folds),
    box: ({ number, leftMm, topMm, widthMm, heightMm, isDashed }: RuledBox) =>
      say(isDashed ? 'box.dashed' : 'box', {
        ...{ number, left: leftMm, top: topMm },
        ...{ width: widthMm, height: heightMm },
      }),
    line: ({ from: [fromX, fromY], to: [toX, toY], isDashed }: RuledLine) =>
      say(isDashed ? 'line.dashed' : 'line', { fromX, fromY, toX, toY }),
    stickerPlace: (placement: Placement, isFolded: boolean) => placeText(say, placement, isFolded),
    drawnPlace: (placement: Placement, isFolded: boolean) =>
      say(placement.isCopied ? 'drawn.copied' : 'drawn', {
        name: placement.name,
        size: sizeText(say, placement),
        place: placeText(say, placement, isFolded),
      }),
    copiedThing: (placement: Placement) => {
      const size = sizeText(say, placement);
      return placement.isSticker
        ? say('copy.sticker', { size })
        : say('copy.thing', { name: placement.name, size });
    },
  };
}

function names(say: SayByHand) {
  return {
    circleFor: (colour: string) => say('name.sticker', { colour }),
    ring: say('name.ring'),
    dashedRing: say('name.ring.dashed'),
    dot: say('name.dot'),
    patch: (colour: string) => say('name.patch', { colour }),
    written: (words: string) => say('name.written', { words }),
  };
}

const DIRECTIONS: readonly Direction[] = ['down', 'across'];

function foldText(say: SayByHand, folds: readonly Fold[]): string {
  const [first = '', ...others] = DIRECTIONS.flatMap((direction) => {
    const fold = folds.find((each) => each.direction === direction);
    return fold ? [say(`fold.${direction}.${fold.of}`)] : [];
  });
  const ways = others.reduce((before, next) => say('fold.then', { before, next }), first);
  return say('fold.how', { ways });
}

function sizeText(say: SayByHand, { widthMm, heightMm }: Placement): string {
  return Math.abs(widthMm - heightMm) <= 1
    ? say('size.across', { across: Math.max(widthMm, heightMm) })
    : say('size.both', { width: widthMm, height: heightMm });
}

function placeText(
  say: SayByHand,
  { inside, isPatch, xMm, yMm, widthMm, heightMm, box }: Placement,
  isFolded: boolean,
): string {
  if (inside !== undefined) return say('place.inside', { inside });
  if (isPatch) return say('place.patch', { left: xMm - widthMm / 2, top: yMm - heightMm / 2 });
  const at = { x: xMm, y: yMm };
  if (box === undefined) return say('place', at);
  return say(isFolded ? 'place.part' : 'place.box', { ...at, box });
}
