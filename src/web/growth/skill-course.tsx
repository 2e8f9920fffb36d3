// One skill: what it is, which steps fit now and how sure that is, and how it moved over the weeks.
import type { SkillView } from '../planning/cards.ts';
import { words as planning } from '../planning/words.ts';
import { Pieces } from '../speaking/pieces-shown.tsx';
import { capital } from '../words.ts';
import { CourseChart } from './course-chart.tsx';
import { CourseTable } from './course-table.tsx';
import { words } from './words.ts';

export function SkillCourse({ growth }: { readonly growth: SkillView }) {
  const { skill, sheets, chart } = growth;
  const name = planning.skills[skill];
  return (
    <section className="skill" aria-labelledby={`skill-${skill}`}>
      <div className="skill-words">
        <h3 id={`skill-${skill}`} className="skill-name">
          {capital(name)}
        </h3>
        <p className="help">{words.skillAbout(planning.skillsAbout[skill])}</p>
        {sheets === 0 ? <p className="empty">{words.notMet}</p> : <Fitting growth={growth} />}
      </div>
      {chart === undefined ? null : (
        <div className="skill-course">
          <CourseChart chart={chart} skill={name} />
          <CourseTable chart={chart} skill={name} />
        </div>
      )}
    </section>
  );
}

function Fitting({ growth: { fitting, trend, chart } }: { readonly growth: SkillView }) {
  const isTold = trend === 'rising' || trend === 'falling';
  return (
    <>
      <ul className="fits" aria-label={words.fitsNow}>
        {fitting.map((each) => (
          <li key={each.name}>
            <p>
              <Pieces
                pieces={words.fittingStep}
                controls={{
                  name: capital(each.name),
                  step: <strong>{words.stepOf(each)}</strong>,
                }}
              />
            </p>
            <p className="help">{capital(words.sureOf(each))}</p>
          </li>
        ))}
      </ul>
      <p className={isTold ? 'told-trend' : 'help'}>{words.skillTrend(trend)}</p>
      {chart === undefined ? <p className="help">{words.noCourse}</p> : null}
    </>
  );
}
