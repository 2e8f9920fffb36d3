// The forms that the figures of a key are drawn from, and the values that a key has otherwise than other tasks.
import type { Random } from '../../base/index.ts';
import {
  characterOf,
  DOT_CONTROLS,
  DOT_LAYOUTS,
  dotsOf,
  drawCounts,
  type Figure,
  type FormId,
  formOf,
  formsOf,
  isLetter,
  mostForms,
  roomIn,
  SHAPES,
  uprightTurnDeg,
  withoutVowels,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { Redraw } from '../figure-sets.ts';
import { isRead, lookedAt, standOf, THREE_SIZES, TWO_SIZES } from './contents.ts';
import type { Parameters } from './parameters.ts';

/** All that the drawing of figures must know. */
export interface Brief {
  readonly values: Parameters;
  readonly style: PrintStyle;
  /** Forms that would look like a response. */
  readonly keptOut: readonly FormId[];
}

/** Shapes that most children of three know by sight; others come with longer keys. Common practice, no source. */
const FAMILIAR: readonly FormId[] = [
  'circle',
  'square',
  'triangle',
  'heart',
  'star',
  'crescent',
  'cross',
  'arrow',
  'drop',
  'half-circle',
];
const MOST_FAMILIAR_ENTRIES = 3;

/** Shapes that clearly point, and up when they are not turned. */
export const POINTING: readonly FormId[] = ['arrow', 'triangle', 'drop'];

/** A shape holds a sign if the widest circle in it has at least this radius, as a share of the figure. By eye. */
const SIGN_ROOM = 0.22;

const [UP, RIGHT, DOWN, LEFT] = [0, 90, 180, 270] as const;

/** Fewest dots whose layouts look different enough, and the most that are still seen as a whole. */
const [FEWEST_LAID_DOTS, MOST_LAID_DOTS] = [3, 5];

/** The forms that the figures of a key may take. */
export function formsFor(brief: Brief): readonly FormId[] {
  const { content, entries } = brief.values;
  const forms = poolFor(brief).filter((form) => !brief.keptOut.some((kept) => areOne(form, kept)));
  if (!isRead(content)) return forms;
  const silent = withoutVowels(forms, brief.style.letters);
  return mostOfPool(silent) < entries ? forms : silent;
}

/** Forgotten when this many pools are known: names have letters of their own. */
const MOST_KNOWN = 500;

const mostKnown = new Map<string, number>();

function mostOfPool(forms: readonly FormId[]): number {
  const key = forms.join();
  const before = mostKnown.get(key);
  if (before !== undefined) return before;
  const most = mostForms(forms);
  if (mostKnown.size >= MOST_KNOWN) mostKnown.clear();
  mostKnown.set(key, most);
  return most;
}

function poolFor(brief: Brief): readonly FormId[] {
  const { content } = brief.values;
  if (content === 'dot-layouts') return ['dots'];
  if (content === 'shapes-and-directions' || lookedAt(content).includes('turn')) {
    return POINTING.filter((form) => hasRoom(form, brief));
  }
  return /^(shapes|sizes)/.test(content) ? shapesFor(brief) : formsOf(content);
}

/** Cyrillic and Greek letters that are written like a Latin one, each above its Latin twin. */
const FOREIGN_TWINS = [...'ВЕКМНОРСТХΒΕΖΗΙΚΜΝΟΡΤΧαρνικοхкртсо'];
const LATIN_TWINS = [...'BEKMHOPCTXBEZHIKMNOPTXapvikoxkptco'];

/** One form, or two letters that are written alike in two scripts. */
function areOne(one: FormId, other: FormId): boolean {
  if (one === other) return true;
  if (!isLetter(one) || !isLetter(other)) return false;
  const twin = FOREIGN_TWINS.indexOf(characterOf(one));
  return twin >= 0 && LATIN_TWINS[twin] === characterOf(other);
}

/** Draws what a key has otherwise than other tasks. */
export function redrawFor({ values }: Brief): Redraw {
  return (attribute, count, base, random) => {
    switch (attribute) {
      case 'turn':
        return directions(random, count, values.leftRight, formOf(base));
      case 'size':
        return (count === THREE_SIZES.length ? THREE_SIZES : TWO_SIZES).map((size) => ({ size }));
      case 'count':
        return values.vary === 'layout' ? quantities(random, count) : undefined;
      default:
        return undefined;
    }
  };
}

/** One dot has no layouts: where the layout varies, quantities start with two. */
function quantities(random: Random, count: number): readonly Partial<Figure>[] {
  const control = random.pick(DOT_CONTROLS);
  return drawCounts(random, count, undefined, 2).map((dots) => dotsOf(dots, control));
}

/** How a number of dots lies, in `count` ways. */
export function drawLayouts(random: Random, count: number): readonly Figure[] {
  const dots = random.int(FEWEST_LAID_DOTS, MOST_LAID_DOTS);
  return random.sample(DOT_LAYOUTS, count).map((layout) => ({ form: 'dots', count: dots, layout }));
}

/** The shapes that fit the length of the key and leave room for the response. */
export function shapesFor(brief: Brief): readonly FormId[] {
  const isShort = brief.values.entries <= MOST_FAMILIAR_ENTRIES;
  const pool: readonly FormId[] = isShort ? FAMILIAR : SHAPES;
  return pool.filter((form) => hasRoom(form, brief));
}

/** Whether a form can take its response: what a sign is drawn into must not be narrow. */
function hasRoom(form: FormId, { values }: Brief): boolean {
  const isDrawnInto = values.response === 'sign' && standOf(values) === 'inside';
  return !isDrawnInto || roomIn({ form }).radius >= SIGN_ROOM;
}

/** Up and down first, since they are told apart before left and right (Rudel & Teuber 1963). */
export function directions(
  random: Random,
  count: number,
  leftRight: boolean,
  form: FormId = 'arrow',
): readonly { readonly turn: number }[] {
  const [pair, other] = leftRight
    ? [
        [LEFT, RIGHT],
        [UP, DOWN],
      ]
    : [
        [UP, DOWN],
        [LEFT, RIGHT],
      ];
  const turns = [...pair, ...random.shuffle(other)].slice(0, count);
  return turns.map((turn) => ({ turn: (turn + uprightTurnDeg(form)) % 360 }));
}
