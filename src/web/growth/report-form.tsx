// The report to be printed: on which paper, and whether the adult's own notes are in it.
import type { PaperName } from '../../page/index.ts';
import type { Child } from '../../records/index.ts';
import { PressButtons } from '../actions/press-buttons.tsx';
import { today } from '../children/today.ts';
import { readYes, useKept } from '../offline/kept.ts';
import type { GrowthView } from '../planning/cards.ts';
import { ChoiceControl } from '../sentence/choice-control.tsx';
import { YesNoControl } from '../sentence/yes-no-control.tsx';
import { Pieces } from '../speaking/pieces-shown.tsx';
import { type DatedNote, reportOf } from './report-of.ts';
import { words } from './words.ts';

export interface ReportFormProps {
  readonly growth: GrowthView;
  readonly child: Child;
  readonly notes: readonly DatedNote[];
}

const PAPERS: readonly PaperName[] = ['A4', 'Letter'];

function readPaper(left: unknown): PaperName {
  return PAPERS.find((name) => name === left) ?? 'A4';
}

export function ReportForm({ growth, child, notes }: ReportFormProps) {
  const told = words.report;
  const [paper, setPaper] = useKept('paper of the report', readPaper);
  const [withNotes, setWithNotes] = useKept(`notes in the report on ${child.id}`, readYes);
  const { nickname } = child;
  const day = today();
  const report = reportOf({ growth, nickname, day, paper, notes: withNotes ? notes : [] });
  return (
    <section className="report" aria-labelledby="report">
      <h3 id="report" className="record-title">
        {told.heading}
      </h3>
      <p>{told.about}</p>
      <p className="asked">
        <Pieces
          pieces={told.sentence(notes.length > 0)}
          controls={{
            paper: (
              <ChoiceControl
                label={told.paper}
                value={paper}
                choices={PAPERS.map((name) => ({ value: name, name }))}
                objection={undefined}
                onChange={(chosen) => setPaper(PAPERS.find((name) => name === chosen) ?? paper)}
              />
            ),
            notes: (
              <YesNoControl
                label={told.withNotes}
                value={withNotes}
                choices={told.notes}
                objection={undefined}
                onChange={setWithNotes}
              />
            ),
          }}
        />
      </p>
      {withNotes ? <p className="help">{told.lookThrough}</p> : null}
      <PressButtons what={{ report, name: told.fileName(nickname, day) }} isReady next="pages" />
    </section>
  );
}
