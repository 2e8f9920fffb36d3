// Which forms of a content can stand in one task as shadows, and sets of them, near each other or far.
import type { Random } from '../../base/index.ts';
import {
  areLookAlikes,
  type ContentId,
  type FormId,
  formsKey,
  formsOf,
  isPicture,
  isWantedForm,
  outlineShare,
  turnedOutlineShare,
  wantedFirst,
} from '../../figures/index.ts';
import type { ShadowValues } from './task.ts';

/**
 * Least share in which the outlines of two pictures differ, turned and mirrored ones included: more than for
 * pictures in their colours (0.15), since a shadow has nothing but its outline. By eye: a bus and a fire
 * engine, a ball and an apple fall below it.
 */
const PICTURE_SHARE = 0.2;
/** A band of likeness holds this share of the forms that can stand beside a form. */
const BAND_SHARE = 1 / 3;
/** So many sets are drawn, and the one kept whose outlines are most alike, or least. */
const DRAWS = 6;

/** All that is known of the forms of a content; forms by their number. */
interface Table {
  readonly forms: readonly FormId[];
  /** For each form those that can stand beside it, the one most like it first. */
  readonly beside: readonly (readonly number[])[];
  readonly fits: readonly (readonly boolean[])[];
  /** Share of outline in hundredths. */
  readonly apart: readonly (readonly number[])[];
  /** A set that is always to be had, of forms that go with most others. */
  readonly surest: readonly number[];
}

const known = new Map<string, Table>();

function tableOf(content: ContentId): Table {
  const key = formsKey(content);
  const table = known.get(key) ?? measure(formsOf(content));
  known.set(key, table);
  return table;
}

/** The most shadows of a content that can stand in one task. */
export function mostShadows(content: ContentId): number {
  return tableOf(content).surest.length;
}

/**
 * `count` forms in random order, every two of them fairly different as shadows, the first `models` of them
 * as like to the others, or as unlike, as `likeness` says. `count` is at most `mostShadows`.
 */
export function drawShadowForms(
  content: ContentId,
  { models, shadows: count, likeness }: Pick<ShadowValues, 'models' | 'shadows' | 'likeness'>,
  random: Random,
  letters?: string,
): readonly FormId[] {
  const table = tableOf(content);
  const sets = Array.from({ length: DRAWS }, () =>
    drawSet(table, count, likeness, random, letters),
  );
  const whole = sets.filter((set) => set.length === count);
  const chosen = whole.length > 0 ? likestOf(table, whole, models, likeness) : undefined;
  const numbers = chosen ?? random.shuffle(table.surest).slice(0, count);
  return numbers.flatMap((number) => table.forms.slice(number, number + 1));
}

/** A form and such as are as like to it as is wanted, then any others; fewer than `count` where they run out. */
function drawSet(
  { forms, beside, fits }: Table,
  count: number,
  likeness: ShadowValues['likeness'],
  random: Random,
  letters: string | undefined,
): readonly number[] {
  const byName = (numbers: readonly number[]) =>
    wantedFirst(numbers, letters, (number) => forms[number]);
  const drawn = random.int(0, forms.length - 1);
  const wanted = forms.flatMap((form, number) => (isWantedForm(form, letters) ? [number] : []));
  const first = wanted[drawn % Math.max(1, wanted.length)] ?? drawn;
  const others = beside[first] ?? [];
  const size = Math.ceil(others.length * BAND_SHARE);
  const spare = others.length - size;
  const start = { near: 0, middle: Math.floor(spare / 2), far: spare }[likeness];
  const band = others.slice(start, start + size);
  const rest = others.filter((other) => !band.includes(other));
  const set = [first];
  for (const next of byName([...random.shuffle(band), ...random.shuffle(rest)])) {
    if (set.length >= count) break;
    if (set.every((member) => fits[member]?.[next])) set.push(next);
  }
  return set;
}

function likestOf(
  { apart }: Table,
  sets: readonly (readonly number[])[],
  models: number,
  likeness: ShadowValues['likeness'],
): readonly number[] | undefined {
  const totals = sets.map((set) =>
    sumOf(set.slice(0, models).map((one) => sumOf(set.map((other) => apart[one]?.[other] ?? 0)))),
  );
  const ordered = [...totals].sort((a, b) => a - b);
  const place = { near: 0, middle: Math.floor(ordered.length / 2), far: ordered.length - 1 };
  return sets[totals.indexOf(ordered[place[likeness]] ?? 0)];
}

function measure(forms: readonly FormId[]): Table {
  const fits = symmetric(forms, canStandTogether);
  const apart = symmetric(forms, (one, other) =>
    Math.round(100 * outlineShare({ form: one }, { form: other })),
  );
  const numbers = forms.map((_, number) => number);
  const beside = numbers.map((one) =>
    numbers
      .filter((other) => fits[one]?.[other])
      .sort((a, b) => (apart[one]?.[a] ?? 0) - (apart[one]?.[b] ?? 0)),
  );
  const byRoom = [...numbers].sort((a, b) => (beside[b]?.length ?? 0) - (beside[a]?.length ?? 0));
  const surest: number[] = [];
  for (const next of byRoom) {
    if (surest.every((member) => fits[member]?.[next])) surest.push(next);
  }
  return { forms, beside, fits, apart, surest };
}

/** What holds of every two items, the same both ways round, asked once. */
function symmetric<T, V>(
  items: readonly T[],
  ask: (one: T, other: T) => V,
): readonly (readonly V[])[] {
  const rows: V[][] = [];
  for (const [row, one] of items.entries()) {
    const before = rows.flatMap((known) => known.slice(row, row + 1));
    rows.push([...before, ...items.slice(row).map((other) => ask(one, other))]);
  }
  return rows;
}

function canStandTogether(one: FormId, other: FormId): boolean {
  if (areLookAlikes(one, other)) return false;
  const arePictures = isPicture(one) && isPicture(other);
  return !arePictures || turnedOutlineShare({ form: one }, { form: other }) >= PICTURE_SHARE;
}

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, next) => sum + next, 0);
}
