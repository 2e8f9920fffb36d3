// What recorded choices say of pairs that are mixed up.
import { describe, expect, test } from 'vitest';
import { type ActivityId, activityOf, type Option } from '../activities/index.ts';
import { type Figure, figureName } from '../figures/index.ts';
import { loadCatalogue } from '../languages/index.ts';
import { confusionsIn, type Look } from '../learner/index.ts';
import type { Instead, ResultInView } from '../records/index.ts';
import { DEFAULT_PAGE, DEFAULT_PRINT, makeSheet } from '../sheets/index.ts';
import { looksOf } from './looks.ts';
import { pairNames } from './pair-names.ts';
import { factsOf } from './sheet-facts.ts';
import type { GivenSheet } from './standing.ts';

function sheetOf(activity: ActivityId, content: string, seed: number) {
  const made = makeSheet({
    activity,
    step: 2,
    values: { content },
    seed,
    page: DEFAULT_PAGE,
    print: DEFAULT_PRINT,
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

/** The sheet as given, its first task not right, with what was noted. */
function given(
  activity: ActivityId,
  content: string,
  seed: number,
  noted: (options: readonly Option[], about?: number) => Instead | undefined,
): GivenSheet {
  const sheet = sheetOf(activity, content, seed);
  const [first] = sheet.tasks;
  const decision = first && activityOf(activity).decisions(first)[0];
  const instead = decision && noted(decision.options, decision.about);
  const result: ResultInView = {
    id: String(seed),
    at: 0,
    kind: 'result',
    child: 'a-child',
    code: sheet.code,
    day: '2026-09-07',
    tasks: sheet.tasks.map((_, place) =>
      place > 0
        ? { outcome: 'not-tried' }
        : { outcome: 'not-yet', ...(instead ? { instead: [instead] } : {}) },
    ),
    alsoRecorded: [],
  };
  return { result, facts: factsOf(sheet), rightAlone: 0 };
}

describe('a wrong choice that was tapped', () => {
  test('counts for the pair of the figure chosen and the one that was looked for', () => {
    const sheet = given('find-the-same', 'colours', 3, (options) => {
      const wrong = options.find(({ isRight }) => !isRight);
      return wrong?.mark === undefined ? undefined : { place: wrong.mark };
    });
    const [{ options = [] } = {}] = sheet.facts.tasks[0]?.decisions ?? [];
    const [right, wrong] = [true, false].map((is) => options.find(({ isRight }) => isRight === is));
    const rows = confusionsIn(looksOf([sheet])).filter(({ times }) => times > 0);
    expect(rows).toHaveLength(1);
    expect(rows[0]?.pair).toEqual([right?.figure.colour, wrong?.figure.colour].sort());
  });

  test('counts by name where it is about a figure of a key', () => {
    const sheet = given('by-key', 'shapes', 5, (options, about) => {
      const wrong = options.find(({ isRight }) => !isRight);
      if (!wrong || about === undefined) return undefined;
      return { place: about, label: figureName(wrong.figure) };
    });
    const rows = confusionsIn(looksOf([sheet])).filter(({ times }) => times > 0);
    expect(rows.map(({ times }) => times)).toEqual([1]);
  });

  test('counts by the name it was given in another language, and pairs are named in the one that reads', async () => {
    await loadCatalogue('es');
    const sheet = given('by-key', 'shapes', 5, (options, about) => {
      const wrong = options.find(({ isRight }) => !isRight);
      if (!wrong || about === undefined) return undefined;
      return { place: about, label: figureName(wrong.figure, 'es') };
    });
    const chosen = (looks: readonly Look[]) => looks.flatMap((look) => look.chosen ?? []);
    const [english, spanish] = [looksOf([sheet]), looksOf([sheet], 'es')].map(chosen);
    expect(english).toHaveLength(1);
    expect(spanish).toHaveLength(1);
    expect(spanish).not.toEqual(english);
  });

  test('counts nothing where what was tapped is right, or is nowhere on the sheet', () => {
    for (const place of [0, 999]) {
      const sheet = given('find-the-same', 'colours', 3, (options) => {
        const right = options.find(({ isRight }) => isRight);
        return place === 0 && right?.mark !== undefined ? { place: right.mark } : { place: 999 };
      });
      expect(looksOf([sheet])).toEqual([]);
    }
  });

  test('of which nothing was noted is no look at all', () => {
    expect(looksOf([given('find-the-same', 'colours', 3, () => undefined)])).toEqual([]);
  });
});

describe('two figures beside each other', () => {
  const names = (one: Figure, other: Figure) => pairNames(one, other);

  test('are called by what sets them apart alone', () => {
    expect(names({ form: 'circle', colour: 'red' }, { form: 'circle', colour: 'orange' })).toEqual([
      'red',
      'orange',
    ]);
    expect(names({ form: 'small-b' }, { form: 'small-d' })).toEqual(['small b', 'small d']);
    expect(
      names({ form: 'dots', count: 3, layout: 'dice' }, { form: 'dots', count: 4, layout: 'dice' }),
    ).toEqual(['three', 'four']);
    expect(names({ form: 'square', size: 0.5 }, { form: 'square' })).toEqual(['smaller', 'bigger']);
  });

  test('have their whole names where more sets them apart', () => {
    expect(names({ form: 'circle', colour: 'red' }, { form: 'square', colour: 'blue' })).toEqual([
      'red circle',
      'blue square',
    ]);
  });
});
