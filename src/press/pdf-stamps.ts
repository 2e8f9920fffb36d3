// Drawings that come on page after page, each once in the file (form XObjects, ISO 32000, 8.10).
import { type Drawing, eachPoint, PART, WITH } from './drawing.ts';
import { Operators } from './operators.ts';
import type { OpenDocument } from './pdf-document.ts';
import { writeDrawing } from './pdf-drawing.ts';
import type { PdfReference } from './pdf-library.js';

export interface Stamps {
  readonly startPage: () => void;
  /** The name by which content shows the drawing about its origin, once it has come on enough pages. */
  readonly nameOf: (drawing: Drawing) => string | undefined;
  /** Makes them known to the pages that have these resources. */
  readonly end: (resources: PdfReference) => void;
}

/**
 * What an object of its own costs, in numbers of a drawing, each of which is about a byte when it is packed: a drawing
 * becomes a stamp on the page on which it would have cost as much without.
 */
const STAMP_COST = 400;
/** Drawings are told by their hashes; the last so many are remembered, and at most as many again. */
const MOST_SEEN = 4096;
/** Room for the numbers of all stamps, and what each takes beside them: no more than 4096 are made. */
const ROOM = 2 ** 20;
const BESIDE = 256;

interface Seen {
  lastPage: number;
  pages: number;
}

interface Stamp {
  readonly name: string;
  readonly id: number;
  readonly numbers: Int32Array;
}

/** Stamps are written when they are due; of them their numbers are kept, of other drawings a hash for a while. */
export function stampsOf({ library, objects, newId, put }: OpenDocument): Stamps {
  const stamps = new Map<number, Stamp>();
  const content = new Operators();
  let room = ROOM;
  let page = 0;
  let [seen, seenBefore] = [new Map<number, Seen>(), new Map<number, Seen>()];
  const pagesWith = (hash: number) => {
    const found = seen.get(hash) ?? seenBefore.get(hash) ?? { lastPage: 0, pages: 0 };
    if (found.lastPage !== page) found.pages += 1;
    found.lastPage = page;
    if (seen.size === MOST_SEEN) [seen, seenBefore] = [new Map(), seen];
    seen.set(hash, found);
    return found.pages;
  };
  const make = (drawing: Drawing): Stamp => {
    const id = newId();
    content.clear();
    writeDrawing(drawing, content, { x: 0, y: 0 });
    const box = boxOf(drawing).join(' ');
    objects.putStream(id, `/Subtype/Form/BBox[${box}]/Resources<<>>`, content.written);
    return { id, name: `S${stamps.size + 1}`, numbers: drawing.numbers.slice(0, drawing.length) };
  };
  return {
    startPage: () => {
      page += 1;
    },
    nameOf: (drawing) => {
      const hash = hashOf(drawing);
      const known = stamps.get(hash);
      // Another drawing with the same hash is drawn as one that comes once.
      if (known) return isSame(known.numbers, drawing) ? known.name : undefined;
      const { length } = drawing;
      const pages = pagesWith(hash);
      const isDue = pages > 1 && (pages - 1) * length >= STAMP_COST;
      if (!isDue || length + BESIDE > room) return undefined;
      room -= length + BESIDE;
      const stamp = make(drawing);
      stamps.set(hash, stamp);
      return stamp.name;
    },
    end: (resources) => {
      if (stamps.size === 0) return;
      const list = library.ref();
      put(list, `<<${[...stamps.values()].map(({ name, id }) => `/${name} ${id} 0 R`).join('')}>>`);
      resources.data.XObject = list;
    },
  };
}

function hashOf({ numbers, length }: Drawing): number {
  let hash = length;
  for (let at = 0; at < length; at++) {
    // An odd number near 2³² divided by the golden ratio, as is usual for mixing.
    hash = Math.imul(hash ^ (numbers[at] as number), 0x9e37_79b1);
    hash ^= hash >>> 15;
  }
  return hash;
}

function isSame(numbers: Int32Array, drawing: Drawing): boolean {
  if (numbers.length !== drawing.length) return false;
  for (let at = 0; at < numbers.length; at++) {
    if (numbers[at] !== drawing.numbers[at]) return false;
  }
  return true;
}

/** Left, top, right and bottom of all its points, and as far about them as a line with sharp corners reaches. */
function boxOf({ numbers, length }: Drawing): readonly number[] {
  let [left, top, right, bottom, width] = [0, 0, 0, 0, 0];
  const visit = (x: number, y: number) => {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  };
  for (let at = 0; at < length; ) {
    const part = numbers[at++];
    if (part === PART.clip) {
      for (let paths = numbers[at++] as number; paths > 0; paths--)
        at = eachPoint(numbers, at, visit);
    } else if (part === PART.paint) {
      const how = numbers[at++] as number;
      if ((how & WITH.fill) > 0) at += 1;
      if ((how & WITH.line) > 0) {
        width = Math.max(width, numbers[at + 1] as number);
        at += 3 + (numbers[at + 2] as number);
      }
      at = eachPoint(numbers, at, visit);
    }
  }
  // Half a line's width, four times as far at the sharpest corner.
  const reach = 2 * width + 1;
  return [left - reach, top - reach, right + reach, bottom + reach];
}
