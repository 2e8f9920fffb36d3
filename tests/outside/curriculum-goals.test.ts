// The goals that sheets are said to serve, against the identifiers of the published curricula.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { FRAMEWORKS, GOALS, type GoalId, goalsOf, type SheetSpec } from '../../src/sheets/index.ts';
import { readFacts } from './facts/read-facts.ts';

type Made = Pick<SheetSpec, 'activity' | 'step' | 'values' | 'print'>;

const facts = readFacts('curriculum-goals');
const named = (framework: string | undefined, id: string | undefined) => `${framework} ${id}`;

/** Every activity at every step with every content and every response that is not refused there. */
const specs: readonly Made[] = ACTIVITY_IDS.flatMap((activity) => {
  const { ladder, parameters, read } = activityOf(activity);
  return ladder.flatMap((_, index) =>
    (['content', 'response'] as const).flatMap((name) => {
      const spec = parameters[name];
      const values = spec?.kind === 'choice' ? spec.values : [];
      return values
        .map(
          (value) =>
            ({ activity, step: index + 1, values: { [name]: value }, print: 'colour' }) as const,
        )
        .filter(({ step, values, print }) => read(step, values, { print }).ok);
    }),
  );
});

function valueIn({ activity, step, values }: Made, name: string): string {
  return String(values[name] ?? activityOf(activity).ladder[step - 1]?.values[name]);
}

const goalsBySpec = new Map(specs.map((spec) => [spec, goalsOf(spec)]));

function served(id: GoalId): readonly Made[] {
  return specs.filter((spec) => goalsBySpec.get(spec)?.includes(id));
}

describe('the table of goals', () => {
  it('names published identifiers, each once, those that the facts call used and no other', () => {
    const ours = GOALS.map(({ framework, id }) => named(framework, id));
    const used = facts
      .filter((row) => row.used === 'yes')
      .map((row) => named(row.framework, row.id));
    expect(ours.toSorted()).toEqual(used.toSorted());
    expect(new Set(GOALS.map(({ id }) => id)).size).toBe(ours.length);
  });

  it('has facts of every framework, each with a source and how sure it is', () => {
    expect(new Set(facts.map((row) => row.framework))).toEqual(new Set(FRAMEWORKS));
    for (const row of facts) {
      expect(row.source, row.id).toMatch(/\d{4}|kindergarten/);
      expect(['seen', 'id', 'memory']).toContain(row.sure);
    }
  });
});

describe('a goal is served', () => {
  it.each(GOALS.map(({ id }) => id))('%s by some sheet', (id) => {
    expect(served(id).length).toBeGreaterThan(0);
  });

  // England 2021: no early learning goal is about shapes or repeating patterns.
  it('in England by no sheet of shapes or repeating patterns that is only pointed at', () => {
    const english = GOALS.filter(({ framework }) => framework === 'eyfs').map(({ id }) => id);
    const pointed = specs.filter(
      (spec) =>
        valueIn(spec, 'response') === 'point' && valueIn(spec, 'content') !== 'dot-quantities',
    );
    expect(pointed.length).toBeGreaterThan(0);
    for (const spec of pointed) {
      for (const id of english) {
        expect(goalsBySpec.get(spec), JSON.stringify(spec)).not.toContain(id);
      }
    }
  });

  it('of number by sheets of quantities alone', () => {
    for (const id of ['P-MATH 1-5', 'K.CC.C.6', 'ELG Number', 'ELG Numerical Patterns'] as const) {
      for (const spec of served(id)) expect(valueIn(spec, 'content'), id).toBe('dot-quantities');
    }
  });

  it('of the hand by no sheet that is pointed at or stuck', () => {
    for (const id of ['P-PMP 3', 'ELG Fine Motor Skills', 'C-3.3'] as const) {
      for (const spec of served(id)) {
        expect(['point', 'sticker', 'counters'], id).not.toContain(valueIn(spec, 'response'));
      }
    }
  });

  it('of keeping attention by every sheet, and of memory by that activity alone', () => {
    expect(served('P-ATL 6')).toHaveLength(specs.length);
    for (const { activity } of served('C-2.2')) expect(activity).toBe('look-and-remember');
  });
});
