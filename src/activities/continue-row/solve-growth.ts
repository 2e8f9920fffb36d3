// Readings of a strand as a row that grows or shrinks: A, B, then A A, B, then A A A, B.
import type { Filling, Strand } from './solve-strands.ts';

/** So many different parts take turns in a row that grows. */
const CYCLES = [2, 3];
/** How much longer a part gets each time. */
const STEPS = [-2, -1, 0, 1, 2];

/** Equal figures side by side. */
interface Run {
  readonly value: number;
  readonly length: number;
}

/** One part of a growing row: what it is made of, how long at first, and how much longer each time. */
interface Part extends Run {
  readonly step: number;
}

/** What every row that grows or shrinks leads to, of which at least one step is seen. */
export function growthsOf(strand: Strand): readonly Filling[] {
  const gap = strand.indexOf(null);
  const runs = wholeRuns(gap < 0 ? strand : strand.slice(0, gap));
  return CYCLES.flatMap((cycle) => {
    const first = runs.slice(0, cycle);
    if (first.length < cycle || first[0]?.value === first.at(-1)?.value) return [];
    return stepsFor(cycle).flatMap((steps) => {
      const filling = grownFilling(
        strand,
        first.map((run, at) => ({ ...run, step: steps[at] ?? 0 })),
      );
      return filling ? [filling] : [];
    });
  });
}

/** The runs before the gap whose end is seen. */
function wholeRuns(stretch: Strand): readonly Run[] {
  const runs: Run[] = [];
  for (const value of stretch) {
    const last = runs.at(-1);
    if (value !== null && last?.value === value) {
      runs[runs.length - 1] = { value, length: last.length + 1 };
    } else if (value !== null) runs.push({ value, length: 1 });
  }
  return runs.slice(0, -1);
}

function stepsFor(cycle: number): readonly (readonly number[])[] {
  let rows: readonly (readonly number[])[] = [[]];
  for (let part = 0; part < cycle; part++) {
    rows = rows.flatMap((row) => STEPS.map((step) => [...row, step]));
  }
  return rows.filter((row) => row.some((step) => step !== 0));
}

/** What the parts put into the empty places; nothing where a figure speaks against them or no step is seen. */
function grownFilling(strand: Strand, parts: readonly Part[]): Filling | undefined {
  const grown: number[] = [];
  let isSeen = false;
  for (let round = 0; grown.length < strand.length; round++) {
    for (const { value, length, step } of parts) {
      const [now, before] = [length + round * step, length + (round - 1) * step];
      if (now < 1) return undefined;
      const start = grown.length;
      for (let count = 0; count < now; count++) grown.push(value);
      if (!agrees(strand, grown, start)) return undefined;
      // A longer run shows its step once it is longer than the one before, a shorter one at its end.
      const told = start + Math.min(now, before);
      if (round > 0 && step !== 0) isSeen ||= isShown(strand, start, told);
    }
  }
  if (!isSeen) return undefined;
  return strand.flatMap((value, place) => (value === null ? [grown[place] ?? null] : []));
}

function agrees(strand: Strand, grown: readonly number[], start: number): boolean {
  return grown.slice(start).every((value, index) => {
    const shown = strand[start + index] ?? null;
    return shown === null || shown === value;
  });
}

/** Whether all places of a stretch, its last one included, show something. */
function isShown(strand: Strand, first: number, last: number): boolean {
  return last < strand.length && !strand.slice(first, last + 1).includes(null);
}
