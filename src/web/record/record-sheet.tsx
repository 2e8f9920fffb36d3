// Recording a sheet: its code, its picture beside, how it went, and Save.
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Form } from 'react-aria-components/Form';
import type { Child, ResultEntry } from '../../records/index.ts';
import { TextField } from '../children/text-field.tsx';
import { today } from '../children/today.ts';
import { useGround } from '../children/use-ground.ts';
import { objectionOf } from '../children/use-records.ts';
import type { Catalogue, Shown } from '../making/protocol.ts';
import type { Planner } from '../planning/planner.ts';
import { ScanCode } from '../scanning/scan-code.tsx';
import { Paper } from '../table/paper.tsx';
import { MoreToNote } from './more-to-note.tsx';
import { Outcomes } from './outcomes.tsx';
import { emptyDraft, type ResultDraft, resultEntryOf } from './result-draft.ts';
import { nameOf } from './sheet-names.ts';
import { useSheetOfCode } from './use-sheet-of-code.ts';
import { words } from './words.ts';

export interface RecordSheetProps {
  readonly planner: Planner;
  readonly catalogue: Catalogue | undefined;
  readonly child: Child;
  readonly onSaved: (result: ResultEntry, sheet: string) => void;
}

export function RecordSheet({ planner, catalogue, child, onSaved }: RecordSheetProps) {
  const [code, setCode] = useState('');
  const { sheet, objection, isLooking } = useSheetOfCode(planner, code);
  return (
    <section className="record-sheet" aria-label={words.recordSheet(child.nickname)}>
      <h2 className="record-title">{words.recordSheet(child.nickname)}</h2>
      <CodeField planner={planner} code={code} objection={objection} onChange={setCode} />
      <div className="sheet-place">
        {sheet === undefined ? null : <Paper shown={sheet} isMaking={false} />}
        <p className={sheet === undefined ? 'no-sheet' : 'sheet-found'} aria-live="polite">
          {sheetWords(catalogue, sheet, isLooking)}
        </p>
      </div>
      {sheet === undefined ? null : (
        <HowItWent
          key={`${child.id} ${sheet.code}`}
          sheet={sheet}
          child={child}
          onSaved={(result) => {
            setCode('');
            const name = nameOf(catalogue, sheet.activity);
            onSaved(result, words.sheetName(name, sheet.step));
          }}
        />
      )}
    </section>
  );
}

function sheetWords(
  catalogue: Catalogue | undefined,
  sheet: Shown | undefined,
  isLooking: boolean,
) {
  if (sheet === undefined) return isLooking ? words.looking : words.noSheet;
  return words.sheetFound(nameOf(catalogue, sheet.activity), sheet.step, sheet.tasks);
}

interface CodeFieldProps {
  readonly planner: Planner;
  readonly code: string;
  readonly objection: string;
  readonly onChange: (code: string) => void;
}

/** A code half typed is no fault: it is objected to once the person has done with it. */
function CodeField({ planner, code, objection, onChange }: CodeFieldProps) {
  const [finished, setFinished] = useState('');
  return (
    <Form
      className="code-place"
      onSubmit={(event) => {
        event.preventDefault();
        setFinished(code);
      }}
    >
      <TextField
        label={words.code}
        help={words.codeHelp}
        value={code}
        most={100}
        isCode
        objection={finished === code ? objection : ''}
        onChange={onChange}
        onBlur={() => setFinished(code)}
      />
      <ScanCode planner={planner} code={code} onCode={onChange} />
    </Form>
  );
}

interface HowItWentProps {
  readonly sheet: Shown;
  readonly child: Child;
  readonly onSaved: (result: ResultEntry) => void;
}

function HowItWent({ sheet, child, onSaved }: HowItWentProps) {
  const { append } = useGround();
  const [draft, setDraft] = useState(() => emptyDraft(today()));
  const [objection, setObjection] = useState('');
  const change = (part: Partial<ResultDraft>) => {
    setObjection('');
    setDraft((now) => ({ ...now, ...part }));
  };
  const save = async (event: FormEvent) => {
    event.preventDefault();
    if (Object.keys(draft.outcomes).length === 0) return setObjection(words.nothingChosen);
    const entry = resultEntryOf(draft, child.id, sheet.code, sheet.tasks);
    const saved = await append([entry]);
    if (!saved.ok) return setObjection(objectionOf(saved));
    const [first] = saved.value;
    if (first?.kind === 'result') onSaved(first);
  };
  return (
    <Form className="how-it-went" onSubmit={(event) => void save(event)}>
      <Outcomes sheet={sheet} draft={draft} change={change} />
      <TextField
        label={words.day}
        type="date"
        latest={today()}
        value={draft.day}
        onChange={(day) => change({ day })}
      />
      <MoreToNote sheet={sheet} draft={draft} change={change} />
      <div className="press">
        <p className="objection" role="alert">
          {objection}
        </p>
        <Button type="submit" className="next">
          {words.saveRecord}
        </Button>
      </div>
    </Form>
  );
}
