// Writes the records of the invented group; run by hand after plans, difficulties or the cast have changed:
// node scripts/run.mjs scripts/make-demo.ts
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { DemoChild } from '../src/plan/demo/rows.ts';
import { newPlanner } from '../src/plan/index.ts';
import { CAST } from './demo/cast.ts';
import { lifeOf } from './demo/life.ts';

const TARGET = 'src/plan/demo/demo.generated.json';

/** A line for each row, so that a change can be read. */
function linesOf(rows: readonly object[]): string {
  return rows.map((row) => JSON.stringify(row)).join(',\n');
}

function textOf({ sheets, plans, ...facts }: DemoChild): string {
  const head = JSON.stringify(facts).slice(0, -1);
  return `${head},\n"sheets":[\n${linesOf(sheets)}],\n"plans":[\n${linesOf(plans)}]}`;
}

export function main(): void {
  const planner = newPlanner();
  const children = CAST.map((invented) => textOf(lifeOf(invented, planner)));
  writeFileSync(resolve(TARGET), `{"children":[\n${children.join(',\n')}]}\n`);
}
