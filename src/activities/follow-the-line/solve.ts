// Finds every way to follow the printed lines from the starts to the ends, from the printed curves alone.
import { type Point, type Told, told } from '../../base/index.ts';
import type { Findings } from '../activity.ts';
import { faultsOf } from './solve-faults.ts';
import { distance, type Meeting, meetingsOf, NEAR_MM, pointsOf } from './solve-meetings.ts';
import type { Answer, Printed } from './task.ts';

/** Lines that cross at less lead on to each other without a corner; degrees. */
const CLEAR_ANGLE_DEG = 45;
/** How far a line may begin from the middle of its start, or end from that of its end, in mm. */
const AT_PLACE_MM = 1;
const MOST_ANSWERS = 20;

export function solve(printed: Printed): Findings<Answer> {
  const lines = printed.lines.map(pointsOf);
  const meetings = meetingsOf(lines);
  const crossings = meetings.filter(({ angleDeg }) => angleDeg !== undefined);
  const doubtful = meetings.filter(({ angleDeg = 0 }) => angleDeg < CLEAR_ANGLE_DEG);
  const from = lines.map((line) => placeAt(line[0], 0, printed));
  const to = lines.map((line) => placeAt(line.at(-1), printed.lengthMm, printed));
  const places = printed.starts.map((_, place) => place);
  const isWhole = [from, to].every((found) => places.every((place) => found.includes(place)));
  const reach = places.map((place) => {
    const line = from.indexOf(place);
    return [...new Set(linesReached(line, doubtful).map((other) => to[other] ?? -1))];
  });
  return {
    answers: isWhole ? oneEach(reach) : [],
    faults: [
      ...(isWhole ? [] : [told('follow-the-line', 'fault.no-line')]),
      ...doubtful.slice(0, 1).map(doubtIn),
      ...faultsOf(printed, lines, crossings, from),
    ],
  };
}

/** The number of the start or end that a point lies at; −1 for none. */
function placeAt(point: Point | undefined, along: number, { laneMm, starts }: Printed): number {
  return starts.findIndex((_, place) => {
    const middle = { x: along, y: (place + 0.5) * laneMm };
    return point !== undefined && distance(point, middle) <= AT_PLACE_MM;
  });
}

/** The lines on which one may come out that begins on `start` and goes over at any doubtful place. */
function linesReached(start: number, doubtful: readonly Meeting[]): readonly number[] {
  const entered = new Map([[start, 0]]);
  const open = [start];
  for (let line = open.pop(); line !== undefined; line = open.pop()) {
    for (const { lines, spots } of doubtful) {
      const side = lines.indexOf(line);
      const [spot, over, other] = [spots[side], spots[1 - side], lines[1 - side]];
      if (!spot || !over || other === undefined || spot.piece < (entered.get(line) ?? 0)) continue;
      if ((entered.get(other) ?? Number.POSITIVE_INFINITY) <= over.piece) continue;
      entered.set(other, over.piece);
      open.push(other);
    }
  }
  return [...entered.keys()];
}

/** Every choice of one of each list, no two the same; cut off. */
function oneEach(lists: readonly (readonly number[])[]): readonly Answer[] {
  let chosen: readonly Answer[] = [[]];
  for (const list of lists) {
    chosen = chosen
      .flatMap((before) =>
        list.filter((next) => !before.includes(next)).map((next) => [...before, next]),
      )
      .slice(0, MOST_ANSWERS);
  }
  return chosen;
}

function doubtIn({ lines: [one, other], angleDeg }: Meeting): Told {
  const lines = { one: one + 1, other: other + 1 };
  return angleDeg === undefined
    ? told('follow-the-line', 'fault.close', { ...lines, leastMm: NEAR_MM })
    : told('follow-the-line', 'fault.angle', { ...lines, leastDeg: CLEAR_ANGLE_DEG });
}
