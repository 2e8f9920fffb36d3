// Simulated children given sheets by the learner model, by a fixed ladder and by a staircase: `npm run simulate`.
import { randomFrom } from '../src/base/index.ts';
import { type Child, newChild } from './simulation/child.ts';
import { confusionTable } from './simulation/confusion.ts';
import { type Course, courseOf } from './simulation/course.ts';
import { ladder, learner, type Policy, sharedStaircase, staircase } from './simulation/policies.ts';
import { groupTable, mainTable } from './simulation/tables.ts';

const USUAL_CHILDREN = 1000;

export function main([children = String(USUAL_CHILDREN), seed = '1']: readonly string[]): void {
  const count = Number(children);
  if (!(count > 0)) throw new Error(`simulate › children: expected above 0, got ${children}`);
  console.log(`${count} simulated children, seed ${seed} (npm run simulate ${count} ${seed})\n`);
  const courses = [learner, ladder, staircase, sharedStaircase].map((policy) =>
    coursesOf(policy, count, seed),
  );
  console.log(`${mainTable(courses)}\n`);
  console.log(`${groupTable(courses)}\n`);
  console.log(confusionTable(count, Number(seed)));
}

/** The same children for every policy; their answers differ, since their sheets do. */
function coursesOf(policy: Policy, count: number, seed: string): readonly Course[] {
  const random = randomFrom(Number(seed));
  return Array.from({ length: count }, () => {
    const child: Child = newChild(random.fork());
    return courseOf(child, policy, random.fork());
  });
}
