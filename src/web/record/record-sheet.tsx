// Recording a sheet: picked or found by its code, its picture beside, how it went, and Save.
import { useCallback } from 'react';
import type { Child, ResultEntry } from '../../records/index.ts';
import { OpenPackFile } from '../actions/open-pack-file.tsx';
import type { Maker } from '../making/maker.ts';
import type { Catalogue, Shown } from '../making/protocol.ts';
import { readText, useKept } from '../offline/kept.ts';
import type { Planner } from '../planning/planner.ts';
import { CodeField } from './code-field.tsx';
import { useCodeInAddress } from './code-in-address.ts';
import { HowItWent } from './how-it-went.tsx';
import { PickSheet } from './pick-sheet.tsx';
import { nameOf } from './sheet-names.ts';
import { TapPicture } from './tap-picture.tsx';
import { useDraft } from './use-draft.ts';
import { useSheetOfCode } from './use-sheet-of-code.ts';
import { useTaps } from './use-taps.ts';
import { words } from './words.ts';

export interface RecordSheetProps {
  readonly maker: Maker;
  readonly planner: Planner;
  readonly catalogue: Catalogue | undefined;
  readonly child: Child;
  readonly onSaved: (result: ResultEntry, sheet: string) => void;
}

const NOTHING_ASKED = { code: '', isPicked: false };

/** The focus does not go to what came over: nobody has picked it just now. */
function readAsked(left: unknown) {
  return left instanceof Object && 'code' in left
    ? { code: readText(left.code), isPicked: false }
    : NOTHING_ASKED;
}

export function RecordSheet({ maker, planner, catalogue, child, onSaved }: RecordSheetProps) {
  const [{ code, isPicked }, setAsked] = useKept('sheet to record', readAsked);
  const pick = useCallback((code: string) => setAsked({ code, isPicked: true }), [setAsked]);
  const pickFiled = useCallback(
    (code: string) => {
      pick(code);
      return '';
    },
    [pick],
  );
  const wasPicked = useCallback(() => setAsked((now) => ({ ...now, isPicked: false })), [setAsked]);
  useCodeInAddress(pick);
  const { sheet, objection, isLooking } = useSheetOfCode(planner, code);
  const taps = useTaps(planner, sheet?.code);
  const what = `${child.id} ${sheet?.code ?? ''}`;
  const [draft, change] = useDraft(what);
  return (
    <section className="record-sheet" aria-label={words.recordSheet(child.nickname)}>
      <h2 className="record-title">{words.recordSheet(child.nickname)}</h2>
      <div className="code-place">
        <PickSheet
          maker={maker}
          planner={planner}
          catalogue={catalogue}
          child={child}
          code={sheet?.code ?? code}
          onPick={pick}
        />
        <CodeField
          planner={planner}
          code={code}
          objection={objection}
          isWhole={isPicked}
          onChange={(typed) => setAsked({ code: typed, isPicked: false })}
        />
        <OpenPackFile maker={maker} help={words.packFileHelp} onCode={pickFiled} />
      </div>
      <div className="sheet-place">
        {sheet === undefined ? null : (
          <TapPicture key={what} sheet={sheet} taps={taps} draft={draft} change={change} />
        )}
        <p className={sheet === undefined ? 'no-sheet' : 'sheet-found'} aria-live="polite">
          {sheetWords(catalogue, sheet, isLooking)}
        </p>
      </div>
      {sheet === undefined ? null : (
        <HowItWent
          key={what}
          sheet={sheet}
          taps={taps}
          draft={draft}
          change={change}
          child={child}
          takesFocus={isPicked}
          onTookFocus={wasPicked}
          onSaved={(result) => {
            setAsked(NOTHING_ASKED);
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
