// The picture of the sheet that is being recorded, on which is tapped what was chosen.
import { type CSSProperties, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Shown } from '../making/protocol.ts';
import type { TapTask } from '../planning/cards.ts';
import { Paper } from '../table/paper.tsx';
import { notedIn, outcomeOf, type ResultDraft } from './result-draft.ts';
import { notedWords } from './tap-names.ts';
import { TaskTargets } from './tap-targets.tsx';
import { LEAST_PX, targetsAt, zoomFor } from './targets.ts';
import { type Mark, useMarks, useWidth } from './use-marks.ts';
import { words } from './words.ts';

/** How big “Bigger” is where the whole page would do. */
const BIGGER = 2;

export interface TapPictureProps {
  readonly sheet: Shown;
  readonly taps: readonly TapTask[];
  readonly draft: ResultDraft;
  readonly change: (part: Partial<ResultDraft>) => void;
}

export function TapPicture({ sheet, taps, draft, change }: TapPictureProps) {
  const pane = useRef<HTMLDivElement>(null);
  const marks = useMarks(pane, taps);
  const pxPerMm = useWidth(pane) / sheet.widthMm;
  const [wish, setWish] = useState<'bigger' | 'whole'>();
  const [last, setLast] = useState<number>();
  const isThere = marks.length > 0 && pxPerMm > 0;
  const needed = isThere ? zoomFor(boxesOf(marks), pxPerMm) : 1;
  const isBigger = wish === undefined ? needed > 1 : wish === 'bigger';
  const zoom = isBigger ? (needed > 1 ? needed : BIGGER) : 1;
  const targets = isThere ? targetsOf(marks, pxPerMm * zoom) : [];
  const size = { '--zoom': zoom, '--width-mm': sheet.widthMm, '--height-mm': sheet.heightMm };
  return (
    <>
      <div
        ref={pane}
        className="tap-pane"
        style={size as CSSProperties}
        data-bigger={isBigger}
        data-taps={isThere}
      >
        <Paper shown={sheet} isMaking={false}>
          {taps.map((each, task) => (
            <TaskTargets
              // biome-ignore lint/suspicious/noArrayIndexKey: tasks have no name but their place
              key={task}
              task={task}
              taps={each}
              targets={targets.filter((target) => target.task === task)}
              draft={draft}
              onTap={(part) => {
                setLast(task);
                change(part);
              }}
            />
          ))}
        </Paper>
      </div>
      {isThere ? (
        <div className="tap-help">
          <p className="help">{words.tapHelp}</p>
          <Button className="plain" onPress={() => setWish(isBigger ? 'whole' : 'bigger')}>
            {isBigger ? words.wholePage : words.bigger}
          </Button>
        </div>
      ) : null}
      <p className="tap-said" aria-live="polite">
        {last === undefined ? '' : saidOf(last, taps, draft)}
      </p>
    </>
  );
}

function boxesOf(marks: readonly Mark[]) {
  return marks.map(({ box }) => box);
}

function targetsOf(marks: readonly Mark[], pxPerMm: number): readonly Mark[] {
  const boxes = targetsAt(boxesOf(marks), LEAST_PX / pxPerMm);
  return marks.map((mark, place) => ({ ...mark, box: boxes[place] ?? mark.box }));
}

/** What is now said of the task that was tapped last. */
function saidOf(task: number, taps: readonly TapTask[], draft: ResultDraft): string {
  const noted = notedIn(draft, task).map((each) => notedWords(taps[task], each));
  return words.tapped(task + 1, outcomeOf(draft, task), noted);
}
