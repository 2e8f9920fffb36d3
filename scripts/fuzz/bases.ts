// Valid inputs that the hostile ones are made from.
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { knowOwnPicture, type OwnPicture } from '../../src/figures/index.ts';
import { DEFAULT_PAGE, makeSheet, packFileText, type Sheet } from '../../src/sheets/index.ts';

/** A picture of a family's own that passes every check. */
export const OWN_PICTURES: readonly OwnPicture[] = [
  {
    name: 'Boat',
    outline: 'M-400 -300L400 -300L400 300L-400 300Z',
    parts: [
      ['#336699', 'M-400 -300L400 -300L400 300L-400 300Z'],
      ['#ffcc00', 'M-100 -100Q0 -200 100 -100C150 0 100 100 0 100L-100 0Z', 1],
    ],
  },
  {
    outline: 'M0 -450C300 -450 450 -200 450 0L0 450L-450 0Q-450 -450 0 -450Z',
    parts: [['#aa2211', 'M0 -450C300 -450 450 -200 450 0L0 450L-450 0Q-450 -450 0 -450Z']],
  },
];

/** Numbers of those pictures, once they are known. */
export function knownNumbers(): readonly string[] {
  return OWN_PICTURES.map((picture) => {
    const known = knowOwnPicture(picture, 'fuzz');
    if (!known.ok) throw new Error(JSON.stringify(known.refusals));
    return known.value;
  });
}

/** A sheet of two tasks of each activity, at its first and its last step. */
export function someSheets(): readonly Sheet[] {
  return ACTIVITY_IDS.flatMap((activity) =>
    [1, activityOf(activity).ladder.length].map((step) => sheetOf(activity, step)),
  );
}

function sheetOf(activity: (typeof ACTIVITY_IDS)[number], step: number): Sheet {
  const asked = { activity, step, values: {}, page: DEFAULT_PAGE, print: 'colour' } as const;
  const made = makeSheet({ ...asked, seed: 7 * step, tasks: 2 });
  const alone = made.ok ? made : makeSheet({ ...asked, seed: 7 * step, tasks: 1 });
  if (!alone.ok) throw new Error(`${activity}: ${JSON.stringify(alone.refusals)}`);
  return alone.value;
}

/** Pack files of one sheet each, as values; one with own pictures and things to cut. */
export function somePacks(sheets: readonly Sheet[]): readonly unknown[] {
  const packs = sheets.map((sheet): unknown => JSON.parse(packFileText({ sheets: [sheet] })));
  const [first] = packs as readonly object[];
  const edited = JSON.parse(JSON.stringify(first)) as { sheets: { edited?: true }[] };
  for (const sheet of edited.sheets) sheet.edited = true;
  return [...packs, edited, { ...first, pictures: OWN_PICTURES, toCut: ['pieces'] }];
}
