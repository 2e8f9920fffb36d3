// The cells of a small picture: which hang together, and which are specks.

/** Numbers of colours, row by row; `NONE` where there is nothing. */
export interface Cells {
  readonly side: number;
  readonly colours: Int16Array;
}

export const NONE = -1;

/** Takes away what hangs together with the edge in colours that make up much of the edge. */
export function withoutGround({ side, colours }: Cells, leastShare: number): Cells {
  const edge = edgeCells({ side, colours });
  const counts = new Map<number, number>();
  for (const cell of edge) {
    const colour = colours[cell] ?? NONE;
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const isGround = (cell: number) =>
    (counts.get(colours[cell] ?? NONE) ?? 0) >= leastShare * edge.length;
  const left = Int16Array.from(colours);
  const open = edge.filter(isGround);
  for (let cell = open.pop(); cell !== undefined; cell = open.pop()) {
    if (left[cell] === NONE) continue;
    left[cell] = NONE;
    open.push(...besides(side, cell).filter((next) => left[next] !== NONE && isGround(next)));
  }
  return { side, colours: left };
}

/** Cells of the picture beside which there is nothing, or the end. */
function edgeCells({ side, colours }: Cells): number[] {
  return [...colours.keys()].filter((cell) => {
    if (colours[cell] === NONE) return false;
    const near = besides(side, cell);
    return near.length < 4 || near.some((next) => colours[next] === NONE);
  });
}

function besides(side: number, cell: number): number[] {
  const column = cell % side;
  return [
    ...(column > 0 ? [cell - 1] : []),
    ...(column < side - 1 ? [cell + 1] : []),
    ...(cell >= side ? [cell - side] : []),
    ...(cell < side * (side - 1) ? [cell + side] : []),
  ];
}

/** Each cell the colour that most of its neighbours have, of equals the lesser: takes out the grain. */
export function smoothed({ side, colours }: Cells): Cells {
  // One list of counts for all cells: this is most of the time that a photo takes.
  const counts = new Uint8Array(1 + colours.reduce((most, colour) => Math.max(most, colour), 0));
  const next = colours.map((own, cell) => {
    if (own === NONE) return NONE;
    counts.fill(0);
    const [row, column] = [Math.floor(cell / side), cell % side];
    for (let y = Math.max(0, row - 1); y <= Math.min(side - 1, row + 1); y += 1) {
      for (let x = Math.max(0, column - 1); x <= Math.min(side - 1, column + 1); x += 1) {
        const colour = colours[y * side + x] ?? NONE;
        if (colour !== NONE) counts[colour] = (counts[colour] ?? 0) + 1;
      }
    }
    return counts.indexOf(Math.max(...counts));
  });
  return { side, colours: next };
}

/** Patches of fewer cells than `least` get the colour that lies most along them; those with nothing round them go. */
export function withoutSpecks({ side, colours }: Cells, least: number): Cells {
  const left = Int16Array.from(colours);
  for (const patch of patchesOf({ side, colours })) {
    if (patch.length >= least) continue;
    const own = colours[patch[0] ?? 0] ?? NONE;
    const counts = new Map<number, number>();
    for (const cell of patch) {
      for (const next of besides(side, cell)) {
        const colour = left[next] ?? NONE;
        if (colour !== own) counts.set(colour, (counts.get(colour) ?? 0) + 1);
      }
    }
    const colour = mostOf(counts, NONE);
    for (const cell of patch) left[cell] = colour;
  }
  return { side, colours: left };
}

/** Of patches of anything, those at least a share as large as the largest. */
export function withoutCrumbs(cells: Cells, leastShare: number): Cells {
  const { side, colours } = cells;
  const solid = { side, colours: colours.map((colour) => (colour === NONE ? NONE : 0)) };
  const patches = patchesOf(solid).filter(([first = 0]) => solid.colours[first] !== NONE);
  const largest = Math.max(0, ...patches.map(({ length }) => length));
  const left = Int16Array.from(colours);
  for (const patch of patches) {
    if (patch.length < leastShare * largest) for (const cell of patch) left[cell] = NONE;
  }
  return { side, colours: left };
}

function patchesOf({ side, colours }: Cells): readonly (readonly number[])[] {
  const seen = new Uint8Array(colours.length);
  return [...colours.keys()].flatMap((start) => {
    if (seen[start]) return [];
    const patch: number[] = [];
    const open = [start];
    seen[start] = 1;
    for (let cell = open.pop(); cell !== undefined; cell = open.pop()) {
      patch.push(cell);
      for (const next of besides(side, cell)) {
        if (seen[next] || colours[next] !== colours[start]) continue;
        seen[next] = 1;
        open.push(next);
      }
    }
    return [patch];
  });
}

/** What comes most often; of equals the lesser. */
function mostOf(counts: ReadonlyMap<number, number>, otherwise: number): number {
  let [best, most] = [otherwise, 0];
  for (const [colour, count] of counts) {
    if (count > most || (count === most && colour < best)) [best, most] = [colour, count];
  }
  return best;
}
