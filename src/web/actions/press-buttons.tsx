// Getting the pack onto paper: the PDF, or the browser's own printing, with progress and a way to stop.
import { memo, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import { ProgressBar } from 'react-aria-components/ProgressBar';
import type { PressAs, PressWhat } from '../making/protocol.ts';
import { PassingButton } from '../passing-button.tsx';
import { useLatestCall } from '../use-latest-call.ts';
import { words } from '../words.ts';
import { usePressRun } from './use-press-run.tsx';

export interface PressButtonsProps {
  readonly what: PressWhat;
  readonly isReady: boolean;
  /** Which of the two is the next thing to do. */
  readonly next?: PressAs;
  /** Something else on the screen is the next thing to do, and these stand beside it. */
  readonly isAside?: boolean;
  /** What the buttons say; absent: as for any pack. */
  readonly names?: Readonly<Partial<Record<PressAs, string>>>;
  /** Called as a run begins, such as to keep what is printed. */
  readonly onStart?: () => void;
}

const NAMES = {
  pdf: 'getPdf',
  pages: 'print',
  zip: 'getZip',
  pack: 'getPackFile',
} as const satisfies Readonly<Record<PressAs, keyof typeof words>>;

/** The next thing to do first; a file for each child only where there are children. */
function waysOf(what: PressWhat, next: PressAs): readonly PressAs[] {
  const isGroup = 'entries' in what && what.group !== undefined;
  // What a code printed on paper cannot bring to another device, the file does.
  const isFiled =
    'entries' in what &&
    [what.entries.changed, what.entries.pictures].some((all = []) => all.length > 0);
  const ways: readonly PressAs[] = [
    'pdf',
    ...(isGroup ? (['zip'] as const) : []),
    'pages',
    ...(isFiled ? (['pack'] as const) : []),
  ];
  return [next, ...ways.filter((way) => way !== next)];
}

const USUAL_NAMES = {};

export function PressButtons({
  what,
  isReady,
  next = 'pdf',
  isAside = false,
  names = USUAL_NAMES,
  onStart = () => {},
}: PressButtonsProps) {
  const { run, start, cancel } = usePressRun();
  const isRunning = run.progress !== undefined;
  const row = useRef<HTMLDivElement>(null);
  const begin = useLatestCall((as: PressAs) => {
    onStart();
    start(what, as);
  });
  return (
    <div className={isAside ? 'press-aside' : 'press'}>
      <div ref={row} className="row">
        {waysOf(what, next).map((as) => (
          <Way
            key={as}
            as={as}
            name={names[as] ?? words[NAMES[as]]}
            isNext={as === next && !isAside}
            isReady={isReady}
            isRunning={isRunning}
            onStart={begin}
          />
        ))}
        {isRunning ? (
          <PassingButton
            className="quiet"
            onPress={cancel}
            next={() => row.current?.querySelector('button')}
          >
            {words.cancel}
          </PassingButton>
        ) : null}
      </div>
      {run.progress === undefined ? null : (
        <ProgressBar
          className="progress"
          aria-label={run.progress.words}
          value={run.progress.share}
          maxValue={1}
        >
          {({ percentage = 0 }) => (
            <>
              <span className="progress-words">{run.progress?.words}</span>
              <span className="track">
                <span className="done-share" style={{ inlineSize: `${percentage}%` }} />
              </span>
            </>
          )}
        </ProgressBar>
      )}
      <p className="outcome" aria-live="polite">
        {run.outcome}
      </p>
    </div>
  );
}

interface WayProps {
  readonly as: PressAs;
  readonly name: string;
  readonly isNext: boolean;
  readonly isReady: boolean;
  readonly isRunning: boolean;
  readonly onStart: (as: PressAs) => void;
}

/** Drawn anew only when it is to show something else. While it runs it cannot be pressed, and keeps the focus. */
const Way = memo(({ as, name, isNext, isReady, isRunning, onStart }: WayProps) => (
  <Button
    className={isNext ? 'next' : 'plain'}
    isDisabled={!(isReady || isRunning)}
    isPending={isRunning}
    onPress={() => onStart(as)}
  >
    {name}
  </Button>
));
