// Getting the pack onto paper: the PDF, or the browser's own printing, with progress and a way to stop.
import { Button } from 'react-aria-components/Button';
import { ProgressBar } from 'react-aria-components/ProgressBar';
import type { Entries } from '../recipe/entries.ts';
import { words } from '../words.ts';
import { usePressRun } from './use-press-run.ts';

export interface PressButtonsProps {
  readonly entries: Entries;
  readonly isReady: boolean;
}

export function PressButtons({ entries, isReady }: PressButtonsProps) {
  const { run, start, cancel } = usePressRun();
  const isRunning = run.progress !== undefined;
  const canStart = isReady && !isRunning;
  return (
    <div className="press">
      <div className="row">
        <Button className="next" isDisabled={!canStart} onPress={() => start(entries, 'pdf')}>
          {words.getPdf}
        </Button>
        <Button className="plain" isDisabled={!canStart} onPress={() => start(entries, 'pages')}>
          {words.print}
        </Button>
        {isRunning ? (
          <Button className="quiet" onPress={cancel}>
            {words.cancel}
          </Button>
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
