// No model lies under the writing hand: on every step of every activity, for the right hand and for the left, on pages
// that are read from the left and from the right.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, type Activity, activityOf } from '../../src/activities/index.ts';
import {
  type Bounds,
  compose,
  IDENTITY,
  randomFrom,
  type Transform,
} from '../../src/base/index.ts';
import { type Language, registerCatalogue } from '../../src/languages/index.ts';
import { HANDS, type PrintStyle, type SceneNode, type Use } from '../../src/page/index.ts';
import { boundsOf } from '../scene-bounds.ts';
import { testSeed } from '../seed.ts';

registerCatalogue('ar', {});

type HandName = (typeof HANDS)[number];

/** What touches by less is not beside each other, in mm. */
const SLACK_MM = 0.01;
const ROUNDS = 2;
const SEED = testSeed('models and the writing hand');

interface Used {
  readonly use: Use;
  readonly role: string;
  readonly bounds: Bounds;
}

interface Seen {
  /** What the groups above have still to be compared with. */
  readonly open: readonly Used[];
  readonly covered: readonly string[];
  readonly places: number;
}

/** Models and places under `node`; they are compared in the innermost group that holds some of both. */
function seenIn(node: SceneNode, hand: HandName, outer: Transform = IDENTITY): Seen {
  if (node.kind === 'text') return { open: [], covered: [], places: 0 };
  if (node.use) {
    const bounds = boundsOf({ kind: 'group', transform: outer, children: [node] });
    const role = node.kind === 'group' ? (node.role ?? node.kind) : node.kind;
    return {
      open: [{ use: node.use, role, bounds }],
      covered: [],
      places: node.use === 'place' ? 1 : 0,
    };
  }
  if (node.kind === 'shape') return { open: [], covered: [], places: 0 };
  const inner = compose(outer, node.transform ?? IDENTITY);
  const below = node.children.map((child) => seenIn(child, hand, inner));
  const open = below.flatMap((seen) => seen.open);
  const [models, places] = (['model', 'place'] as const).map((use) =>
    open.filter((used) => used.use === use),
  );
  const covered = (models ?? []).flatMap((model) =>
    (places ?? [])
      .filter((place) => isCovered(model.bounds, place.bounds, hand))
      .map((place) => `${model.role} beside ${place.role}`),
  );
  const isSettled = (models ?? []).length > 0 && (places ?? []).length > 0;
  return {
    open: isSettled ? [] : open,
    covered: [...below.flatMap((seen) => seen.covered), ...covered],
    places: below.reduce((sum, seen) => sum + seen.places, 0),
  };
}

/** Whether any of the model is as high as some of the place, and beside it on the side of the hand. */
function isCovered(model: Bounds, place: Bounds, hand: HandName): boolean {
  const isAsHigh = model.top < place.bottom - SLACK_MM && place.top < model.bottom - SLACK_MM;
  return hand === 'left'
    ? isAsHigh && model.left < place.left - SLACK_MM
    : isAsHigh && model.right > place.right + SLACK_MM;
}

function styleFor(hand: HandName): PrintStyle {
  return { print: 'colour', ...(hand === 'left' ? { hand } : {}) };
}

/** What lies under a hand on pages of the activity that are drawn for a hand. */
function look(
  activity: Activity,
  drawnFor: HandName,
  hand: HandName,
  language: Language,
  changes = {},
) {
  const style = { ...styleFor(drawnFor), language };
  return activity.ladder.flatMap((_, index) => {
    const values = activity.read(index + 1, changes, style);
    if (!values.ok) return [];
    return Array.from({ length: ROUNDS }, (_, round) => {
      const task = activity.generate(values.value, randomFrom(SEED + round), style);
      const { widthMm, heightMm } = activity.room(task.printed, style);
      // At its least size, and with room to spare in either direction: each can have a layout of its own.
      return [
        { widthMm, heightMm },
        { widthMm: 1.5 * widthMm, heightMm },
        { widthMm, heightMm: 1.5 * heightMm },
      ].map((size) => {
        const drawn = activity.draw(task, size, style, false);
        return { step: index + 1, proof: activity.prove(task), ...seenIn(drawn, hand) };
      });
    }).flat();
  });
}

const covered = (pages: ReturnType<typeof look>) =>
  pages.flatMap((page) => page.covered.map((what) => `step ${page.step}: ${what}`));

const PAGES = ACTIVITY_IDS.flatMap((id) => [
  [id, 'a page read from the left', activityOf(id), 'en'] as const,
  [id, 'a page read from the right', activityOf(id), 'ar'] as const,
]);

describe.each(PAGES)('%s, %s', (_, __, activity, language) => {
  test.each(HANDS)('shows no model under the %s hand, on any step', (hand) => {
    const pages = look(activity, hand, hand, language);
    expect(pages.length).toBeGreaterThan(0);
    expect(covered(pages)).toEqual([]);
    for (const { proof } of pages) expect(proof).toEqual({ proven: true });
  });

  // By choice the right half can be given to the right hand on any page.
  const hands = activity.id === 'mirror-half' || language === 'en' ? (['left'] as const) : HANDS;
  test.each(hands)('shows no model under the %s hand, whatever the child is to do', (hand) => {
    const { response } = activity.parameters;
    if (response?.kind !== 'choice') return;
    for (const value of response.values) {
      const pages = look(activity, hand, hand, language, { response: value });
      expect(covered(pages), value).toEqual([]);
    }
  });

  test.each(HANDS)('says of every task where it is answered, for the %s hand', (hand) => {
    const silent = look(activity, hand, hand, language).filter(({ places }) => places === 0);
    expect(silent.map(({ step }) => step)).toEqual([]);
  });
});

test('pages for the right hand have models under a left one, so that the rule can be broken', () => {
  const broken = ACTIVITY_IDS.filter(
    (id) => covered(look(activityOf(id), 'right', 'left', 'en')).length > 0,
  );
  expect(broken).toEqual(
    expect.arrayContaining([
      'find-the-same',
      'shadows',
      'turned-shapes',
      'crossing-table',
      'mirror-half',
      'missing-part',
      'what-changed',
      'same-or-different',
    ]),
  );
});
