// The course of a skill, drawn quietly: the mean as a line, the nine-in-ten band soft behind it, steps as faint marks.
import type { ChartPoint } from '../../plan/index.ts';
import type { CourseWords } from '../planning/cards.ts';
import { words } from './words.ts';

export interface CourseProps {
  readonly chart: CourseWords;
  readonly skill: string;
}

/** The side of the square that the drawing is stretched from. */
const SIDE = 100;

type End = Exclude<keyof ChartPoint, 'across'>;

export function CourseChart({ chart, skill }: CourseProps) {
  const { points, guides } = chart;
  return (
    <figure className="course">
      <div className="course-plot" role="img" aria-label={words.course(skill, chart)}>
        <svg viewBox={`0 0 ${SIDE} ${SIDE}`} preserveAspectRatio="none" aria-hidden="true">
          <path
            className="band"
            d={`${pathOf(points, 'least')}L${pathOf([...points].reverse(), 'most').slice(1)}Z`}
          />
          {guides.map(({ step, up }) => (
            <path key={step} className="guide" d={`M0 ${downOf(up)}H${SIDE}`} />
          ))}
          <path className="band-edge" d={pathOf(points, 'least')} />
          <path className="band-edge" d={pathOf(points, 'most')} />
          <path className="mean" d={pathOf(points, 'mean')} />
        </svg>
        <span className="course-end">{words.harder}</span>
        {guides.map(({ step, up }) => (
          <span key={step} className="guide-name" style={{ insetBlockStart: `${downOf(up)}%` }}>
            {words.guide(step)}
          </span>
        ))}
        <span className="course-end">{words.easier}</span>
      </div>
      <figcaption className="course-foot">
        <span>{words.longDay(chart.from)}</span>
        <span>{words.longDay(chart.to)}</span>
      </figcaption>
    </figure>
  );
}

/** A line through one end of each point, from `M` on. */
function pathOf(points: readonly ChartPoint[], end: End): string {
  const places = points.map(
    (point) => `${(SIDE * point.across).toFixed(2)} ${downOf(point[end]).toFixed(2)}`,
  );
  return `M${places.join('L')}`;
}

function downOf(up: number): number {
  return SIDE * (1 - up);
}
