// The screen on which an adult keeps the records of children: who they are, what they did, and the backup.
import type { Id, ResultEntry, View } from '../../records/index.ts';
import '../look/record.css';
import '../look/taps.css';
import { Message } from '../children/message.tsx';
import { RecordsMain } from '../children/records-main.tsx';
import { useGround } from '../children/use-ground.ts';
import { useSaid } from '../children/use-said.ts';
import type { ScreenProps } from '../screen-props.ts';
import { Backup } from './backup.tsx';
import { Children } from './children.tsx';
import { RecordSheet } from './record-sheet.tsx';
import { ResultList } from './result-list.tsx';
import { words } from './words.ts';

export default function RecordScreen(props: ScreenProps) {
  return <RecordsMain className="record">{(view) => <Desk {...props} view={view} />}</RecordsMain>;
}

interface DeskProps extends ScreenProps {
  readonly view: View;
}

function Desk({ maker, planner, catalogue, view }: DeskProps) {
  const { child, shelf, entries = [], keeping, choose } = useGround();
  const { said, say, undo } = useSaid();
  const results = (child && view.results.get(child.id)) ?? [];
  const savedChild = (id: Id, nickname: string) => {
    choose(id);
    say({ text: words.savedChild(nickname) });
  };
  const saved = ({ id, tasks }: ResultEntry, sheet: string) =>
    say({ text: words.savedResult(child?.nickname ?? '', sheet, tasks), undo: [id] });
  return (
    <>
      <Children
        view={view}
        onChoose={() => say(undefined)}
        onSaved={savedChild}
        onDeleted={(nickname) => say({ text: words.deleted(nickname) })}
      />
      <Message said={said} undo={undo} />
      {child === undefined ? null : (
        <>
          <RecordSheet
            maker={maker}
            planner={planner}
            catalogue={catalogue}
            child={child}
            onSaved={saved}
          />
          <ResultList
            key={child.id}
            maker={maker}
            catalogue={catalogue}
            child={child}
            results={results}
            onUndo={({ id }) => void undo([id])}
          />
        </>
      )}
      {shelf === 'demo' ? null : (
        <Backup entries={entries.filter(({ demo }) => demo !== true)} keeping={keeping} />
      )}
    </>
  );
}
