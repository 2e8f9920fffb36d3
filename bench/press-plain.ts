// Content streams with nothing shared: each figure written out where it lies, as a pack would have to be packed without.

/** What the graphics state holds, by the operator that sets it. */
type State = ReadonlyMap<string, string>;

interface Spot {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
  readonly state: State;
}

/** The lines of a content stream with all moves of the origin worked out, `stamps` (by name) written out, and nothing set twice. */
export function plainStream(content: string, stamps: ReadonlyMap<string, string>): string {
  const [first = '', ...lines] = content.split('\n');
  const written = [first];
  writePlain(lines, { scale: 1, x: 0, y: 0, state: new Map() }, stamps, written);
  return written.join('\n');
}

function writePlain(
  lines: readonly string[],
  start: Spot,
  stamps: ReadonlyMap<string, string>,
  written: string[],
): Spot {
  const kept: Spot[] = [];
  let spot = start;
  for (const line of lines) {
    const [, scale, x, y] = /^(?:q )?(\d+) 0 0 \d+ (-?\d+) (-?\d+) cm$/.exec(line) ?? [];
    const stamp = /^\/(S\d+) Do$/.exec(line)?.[1];
    const set = /^(.+) (rg|RG|w|j|M|d)$/.exec(line);
    if (line.startsWith('q')) kept.push(spot);
    if (line === 'Q') spot = kept.pop() ?? spot;
    if (scale !== undefined) {
      spot = moved(spot, Number(scale), Number(x), Number(y));
    } else if (stamp !== undefined) {
      spot = { ...spot, state: writePlain(linesOf(stamps, stamp), spot, stamps, written).state };
    } else if (set) {
      const [, value = '', operator = ''] = set;
      if (spot.state.get(operator) === value) continue;
      spot = { ...spot, state: new Map(spot.state).set(operator, value) };
      written.push(line);
    } else written.push(placedLine(line, spot));
  }
  return spot;
}

function linesOf(stamps: ReadonlyMap<string, string>, name: string): readonly string[] {
  const content = stamps.get(name);
  if (content === undefined) throw new Error(`no stamp ${name}`);
  return content.trimEnd().split('\n');
}

function moved({ scale, x, y, state }: Spot, by: number, dx: number, dy: number): Spot {
  return { scale: scale * by, x: x + scale * dx, y: y + scale * dy, state };
}

/** The places of letters and the points of paths, as they are on the page. */
function placedLine(line: string, { scale, x, y }: Spot): string {
  if (line.startsWith('BT ')) {
    return line.replace(
      /(-?\d+) (-?\d+) Tm/g,
      (_, across, down) => `${Number(across) + x} ${Number(down) + y} Tm`,
    );
  }
  if (!/ [mlc] /.test(line)) return line;
  return line.replace(
    /(-?\d+) (-?\d+)(?= )/g,
    (_, across, down) => `${scale * Number(across) + x} ${scale * Number(down) + y}`,
  );
}
