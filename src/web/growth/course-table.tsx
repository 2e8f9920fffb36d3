// The course of a skill as a table, week by week, for those who would rather read it.
import { Button } from 'react-aria-components/Button';
import { Disclosure, DisclosurePanel } from 'react-aria-components/Disclosure';
import { Heading } from 'react-aria-components/Heading';
import { capital } from '../words.ts';
import type { CourseProps } from './course-chart.tsx';
import { words } from './words.ts';

export function CourseTable({ chart, skill }: CourseProps) {
  return (
    <Disclosure className="course-table">
      <Heading level={4} className="more-heading">
        <Button slot="trigger" className="quiet fold outward" aria-label={words.asTableOf(skill)}>
          {words.asTable}
        </Button>
        <span className="help">{words.measured(chart.name)}</span>
      </Heading>
      <DisclosurePanel>
        <table className="figures">
          <caption>{words.tableOf(skill, chart.name)}</caption>
          <thead>
            <tr>
              <th scope="col">{words.week}</th>
              <th scope="col">{words.sheets}</th>
              <th scope="col">{words.fitted}</th>
              <th scope="col">{words.sure}</th>
            </tr>
          </thead>
          <tbody>
            {chart.weeks.map((week) => (
              <tr key={week.day}>
                <th scope="row">{words.longDay(week.day)}</th>
                <td>{week.sheets}</td>
                <td>{week.step}</td>
                <td>{capital(words.sureOf(week))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </DisclosurePanel>
    </Disclosure>
  );
}
