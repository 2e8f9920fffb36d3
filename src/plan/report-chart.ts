// The course of a skill on paper: the mean as a line, the nine-in-ten band soft behind it, steps as faint guides.
import { linePath, type Point, polygonPath } from '../base/index.ts';
import {
  FAINT_INK,
  filled,
  fitText,
  type Group,
  group,
  INK,
  line,
  type Paint,
  QUIET_INK,
  stroked,
  text,
} from '../page/index.ts';
import type { CourseChart } from './growth-chart.ts';

/** What is written round a chart, and what it shows for those who cannot see it. */
export interface CourseLabels {
  readonly alt: string;
  /** Which steps the guides are. */
  readonly measure: string;
  readonly easier: string;
  readonly harder: string;
  /** The days at both ends. */
  readonly from: string;
  readonly to: string;
  /** The steps of the guides, in their order. */
  readonly guides: readonly string[];
}

export const CHART_SIZE = { widthMm: 66, heightMm: 28.5 } as const;
/** The place of the drawing itself, beside the names of the steps and above those of the days. */
const PLOT = { left: 12, top: 0.5, width: 53.6, height: 20 } as const;
/** Small labels, 7 points. */
const EM_MM = 2.5;
const BAND: Paint = '#e2e8e8';
const EDGE_MM = 0.2;
const MEAN_MM = 0.6;
const GUIDE = { colour: FAINT_INK, widthMm: 0.15, dashMm: [0.6, 1.2] } as const;

/** The chart from its own (0, 0). */
export function drawCourse(course: CourseChart, labels: CourseLabels): Group {
  const at = (across: number, up: number): Point => ({
    x: PLOT.left + across * PLOT.width,
    y: PLOT.top + (1 - up) * PLOT.height,
  });
  const along = (end: 'mean' | 'least' | 'most') =>
    course.points.map((point) => at(point.across, point[end]));
  const [least, most] = [along('least'), along('most')];
  const edge = { colour: FAINT_INK, widthMm: EDGE_MM };
  const guides = course.guides.map(({ up }) => {
    const [from, to] = [at(0, up), at(1, up)];
    return line(from.x, from.y, to.x, to.y, GUIDE);
  });
  return group(
    'chart',
    [
      filled(polygonPath([...least, ...[...most].reverse()]), BAND),
      ...guides,
      stroked(linePath(least), edge),
      stroked(linePath(most), edge),
      stroked(linePath(along('mean')), { colour: INK, widthMm: MEAN_MM }),
      ...lettering(course, labels),
    ],
    labels.alt,
  );
}

function lettering({ guides }: CourseChart, labels: CourseLabels) {
  const bottom = PLOT.top + PLOT.height;
  const right = PLOT.left + PLOT.width;
  const beside = PLOT.left - 1.5;
  const small = { colour: QUIET_INK } as const;
  const level = (words: string, baseline: number) =>
    text(words, beside, baseline, EM_MM, { ...small, anchor: 'end' });
  return [
    level(labels.harder, PLOT.top + 0.8 * EM_MM),
    level(labels.easier, bottom),
    ...guides.map(({ up }, place) =>
      level(labels.guides[place] ?? '', PLOT.top + (1 - up) * PLOT.height + 0.35 * EM_MM),
    ),
    text(labels.from, PLOT.left, bottom + 1.4 * EM_MM, EM_MM, small),
    text(fitText(labels.measure, PLOT.width, EM_MM), PLOT.left, bottom + 2.8 * EM_MM, EM_MM, small),
    text(labels.to, right, bottom + 1.4 * EM_MM, EM_MM, { ...small, anchor: 'end' }),
  ];
}
