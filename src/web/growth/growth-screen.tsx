// The screen that tells how a child is getting on, skill by skill, and what it mixes up.
import type { Child, View } from '../../records/index.ts';
import '../look/growth.css';
import { ChildChooser } from '../children/child-chooser.tsx';
import { RecordsMain } from '../children/records-main.tsx';
import { today } from '../children/today.ts';
import { useGround } from '../children/use-ground.ts';
import type { GrowthView } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';
import type { ScreenProps } from '../screen-props.ts';
import { capital } from '../words.ts';
import { GrowthHead } from './growth-head.tsx';
import { MixedUp } from './mixed-up.tsx';
import { ReportForm } from './report-form.tsx';
import { SkillCourse } from './skill-course.tsx';
import { useGrowth } from './use-growth.ts';
import { words } from './words.ts';

export default function GrowthScreen({ planner }: ScreenProps) {
  const { child } = useGround();
  return (
    <RecordsMain className="growth">
      {(view) => (
        <>
          <ChildChooser />
          {child === undefined ? null : (
            <ChildGrowth key={child.id} planner={planner} child={child} view={view} />
          )}
        </>
      )}
    </RecordsMain>
  );
}

interface ChildGrowthProps {
  readonly planner: Planner;
  readonly child: Child;
  readonly view: View;
}

function ChildGrowth({ planner, child, view }: ChildGrowthProps) {
  const { entries = [], shelf } = useGround();
  const reply = useGrowth(planner, { entries, shelf, child: child.id, day: today() });
  if (reply === undefined) return <p aria-busy="true">{words.looking}</p>;
  if (!reply.ok) {
    const sentences = reply.objections.map(({ sentence }) => capital(sentence));
    return (
      <p className="fault" role="alert">
        {sentences.join(' ')}
      </p>
    );
  }
  const notes = (view.results.get(child.id) ?? []).flatMap(({ day, note }) =>
    note === undefined ? [] : [{ day, note }],
  );
  return <Shown growth={reply.value} child={child} notes={notes} />;
}

interface ShownProps {
  readonly growth: GrowthView;
  readonly child: Child;
  readonly notes: readonly { readonly day: string; readonly note: string }[];
}

function Shown({ growth, child, notes }: ShownProps) {
  if (growth.sheets === 0) {
    return (
      <>
        <GrowthHead growth={growth} child={child} />
        <p className="care">{words.care}</p>
      </>
    );
  }
  return (
    <>
      <GrowthHead growth={growth} child={child} />
      <div className="skills">
        {growth.skills.map((skill) => (
          <SkillCourse key={skill.skill} growth={skill} />
        ))}
      </div>
      <div className="beside-skills">
        <MixedUp pairs={growth.pairs} />
        <ReportForm growth={growth} child={child} notes={notes} />
      </div>
      <p className="care">{words.care}</p>
    </>
  );
}
