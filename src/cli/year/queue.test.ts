// In which order the units of a year come: weeks at once, measuring once and only where it is needed, plans then.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS } from '../../activities/index.ts';
import type { Ask, PlannedWeek, YearChild } from './job.ts';
import { type Queue, queueOf } from './queue.ts';

function childOf(number: number, facts: { birthMonth?: string; step?: number } = {}): YearChild {
  const { birthMonth, ...step } = facts;
  const name = `Child ${number}`;
  const child = { id: name, nickname: name, ...(birthMonth === undefined ? {} : { birthMonth }) };
  return { onSheet: { number, name }, child, results: [], ...step };
}

const WEEK: PlannedWeek = { week: 1, sheets: [] };
const PAGES = { ladders: [], rungs: [] };
const children = [1, 2, 3].map((number) => childOf(number, { birthMonth: `2022-0${number}` }));

/** Units that one worker is given until there is none for now; what the children's look comes to is told at once. */
function givenTo(queue: Queue, worker: number, isToPlan: boolean): readonly Ask[] {
  const asks: Ask[] = [];
  for (let ask = queue.next(worker); ask; ask = queue.next(worker)) {
    asks.push(ask);
    if (ask.kind === 'look' && isToPlan) queue.addToPlan(ask.child);
  }
  return asks;
}

const kinds = (asks: readonly Ask[]) => asks.map(({ kind }) => kind);

describe('the units of a year', () => {
  it('begin with a look at each child, and end with it where nothing is to be planned or made', () => {
    expect(kinds(givenTo(queueOf(children), 1, false))).toEqual(['look', 'look', 'look']);
  });

  it('measure each activity once when any child is to be planned, and plan when all of it is done', () => {
    const queue = queueOf(children);
    const before = givenTo(queue, 1, true);
    const measured = before.flatMap((ask) => (ask.kind === 'measure' ? ask.activity : []));
    expect(kinds(before)).toEqual([
      ...['look', 'look', 'look'],
      ...ACTIVITY_IDS.map(() => 'measure'),
    ]);
    expect(measured).toEqual(ACTIVITY_IDS);
    for (const _ of measured.slice(1)) queue.addPages(PAGES);
    expect(queue.next(2)).toBeUndefined();
    // What came to nothing holds nobody up.
    queue.addPages();
    const told = measured.slice(1).map(() => PAGES);
    expect(queue.next(2)).toEqual({ kind: 'plan', child: children[0], pages: told });
    expect(queue.next(2)).toEqual({ kind: 'plan', child: children[1] });
    expect(queue.next(1)).toEqual({ kind: 'plan', child: children[2], pages: told });
    expect(queue.next(1)).toBeUndefined();
  });

  it('give weeks before all else', () => {
    const queue = queueOf(children);
    const onSheet = { number: 1, name: 'Child 1' };
    queue.addWeeks(onSheet, [WEEK, { ...WEEK, week: 2 }]);
    const [first, second, third] = [queue.next(1), queue.next(2), queue.next(1)];
    expect([first, second]).toEqual([
      { kind: 'week', onSheet, planned: WEEK },
      { kind: 'week', onSheet, planned: { ...WEEK, week: 2 } },
    ]);
    expect(third?.kind).toBe('look');
  });

  it('measure for at most twelve children that differ in what is known of them, without their results', () => {
    const many = Array.from({ length: 100 }, (_, place) =>
      childOf(place + 1, { birthMonth: `2022-${String((place % 9) + 1).padStart(2, '0')}` }),
    );
    const steps = Array.from({ length: 30 }, (_, place) => childOf(place + 1, { step: place + 1 }));
    const measuredFor = (some: readonly YearChild[]) => {
      const asks = givenTo(queueOf(some), 1, true);
      const [measure] = asks.flatMap((ask) => (ask.kind === 'measure' ? ask.children : []));
      const all = asks.flatMap((ask) => (ask.kind === 'measure' ? [ask.children.length] : []));
      return { measure, counts: [...new Set(all)] };
    };
    expect(measuredFor(many).counts).toEqual([9]);
    expect(measuredFor(steps).counts).toEqual([12]);
    expect(measuredFor(many).measure?.results).toEqual([]);
  });
});
