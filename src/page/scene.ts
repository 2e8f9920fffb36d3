// A scene: what a page shows, in millimetres from its top left corner, before any file format.
import type { Path, Transform } from '../base/index.ts';
import type { Figure } from '../figures/index.ts';
import type { Direction } from '../languages/index.ts';

/** A colour as `#rrggbb`. */
export type Paint = `#${string}`;

export interface Stroke {
  readonly colour: Paint;
  readonly widthMm: number;
  readonly dashMm?: readonly number[];
  /** Ends and corners; absent: round, the ends half a width over. `square`: cut off at the very end, corners sharp. */
  readonly ends?: 'round' | 'square';
}

/**
 * What the writing hand must know of a part of a task: what the child looks at while it answers, or a place where it
 * answers. A `model` never stands beside the `place` of its group on the side of the hand.
 */
export type Use = 'model' | 'place';

export interface Shape {
  readonly kind: 'shape';
  readonly path: Path;
  readonly fill?: Paint;
  readonly stroke?: Stroke;
  /** Absent: nonzero. */
  readonly rule?: 'nonzero' | 'evenodd';
  /** Absent: neither. */
  readonly use?: Use;
}

export interface Text {
  readonly kind: 'text';
  readonly text: string;
  readonly xMm: number;
  readonly baselineMm: number;
  /** Height of the em in mm. */
  readonly emMm: number;
  readonly weight: 'regular' | 'bold';
  readonly anchor: 'start' | 'middle' | 'end';
  readonly colour: Paint;
  /**
   * Which way its paragraph runs: `start` is the right end of a text that runs to the left. Absent: the order goes by the
   * first letter that has a direction, and `start` is the left end.
   */
  readonly direction?: Direction;
}

/** Parts that belong together; a group with `alt` is one picture to a reader that cannot see it. */
export interface Group {
  readonly kind: 'group';
  readonly children: readonly SceneNode[];
  /** Placed after its own coordinates; absent: as they are. */
  readonly transform?: Transform;
  /** Nothing outside this outline shows (in the group's own coordinates). */
  readonly clip?: Path;
  readonly alt?: string;
  /** A part of the page that stands for itself, such as one of two sheets on it; the outline names it. */
  readonly title?: string;
  /** What it is, for tests and for the app to find it again: `task`, `box`, `figure`, `answer`, `foot`… */
  readonly role?: string;
  /** Which of its task's marks this is, a whole number from 0: what was tapped on a picture is found again by it. */
  readonly mark?: number;
  /** Absent: neither. */
  readonly use?: Use;
  /**
   * On a page that is read from right to left it keeps its look and only moves: what stands at this x of its own
   * coordinates, in mm, comes to stand as far from the other side. Absent: what it holds is placed mirrored.
   */
  readonly keptAboutMm?: number;
  /** The figure that is drawn here, for programs that make the page in another way; no file shows it. */
  readonly shows?: Figure;
  /** The place in its task of the figure that it shows, a whole number from 0; only where the task was traced. */
  readonly place?: number;
}

export type SceneNode = Shape | Text | Group;

export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly nodes: readonly SceneNode[];
  /** What the page is, for the outline of the document and for readers. */
  readonly title: string;
}

/** Pages in order, with what the file says of itself. */
export interface Pages {
  readonly title: string;
  /** BCP 47 tag, such as `en`. */
  readonly language: string;
  readonly pages: Iterable<Page>;
}
