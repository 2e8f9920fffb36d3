// The sheet that is being changed: each figure a button over the picture, what is wrong outlined.
import '../look/taps.css';
import { type CSSProperties, type ReactNode, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Toolbar } from 'react-aria-components/Toolbar';
import type { Spot } from '../../editing/index.ts';
import type { Shown } from '../making/protocol.ts';
import { PassingButton } from '../passing-button.tsx';
import { LEAST_PX, targetsAt, zoomFor } from '../record/targets.ts';
import { useWidth } from '../record/use-marks.ts';
import { Paper } from '../table/paper.tsx';
import { styleOf } from '../table/target-style.ts';
import { ChangeChoices } from './change-choices.tsx';
import type { HeldPlace, HeldTask } from './change-talk.ts';
import { EmptyPlaces } from './empty-places.tsx';
import { withHandles } from './handles.ts';
import type { Changing } from './use-changing.ts';
import { type ChangeTarget, usePlaces, useWholes } from './use-places.ts';
import { WholeChoices } from './whole-choices.tsx';
import { type WholeSpot, WholeTargets, wholeAt } from './whole-targets.tsx';
import { words } from './words.ts';

export interface ChangingPaperProps {
  readonly shown: Shown;
  readonly changing: Changing;
  /** Answers what a chosen figure may become. */
  readonly maker: Parameters<typeof ChangeChoices>[0]['maker'];
}

export function ChangingPaper({ shown, changing, maker }: ChangingPaperProps) {
  const pane = useRef<HTMLDivElement>(null);
  const { held } = changing;
  const found = usePlaces(pane, held.svg, held.tasks);
  const wholes = useWholes(pane, held.svg, held.tasks);
  const pxPerMm = useWidth(pane) / shown.widthMm;
  const isThere = found.length > 0 && pxPerMm > 0;
  const boxes = found.map(({ box }) => box);
  const zoom = isThere ? zoomFor(boxes, pxPerMm) : 1;
  const grown = isThere ? targetsAt(boxes, LEAST_PX / (pxPerMm * zoom)) : [];
  const targets = found.map((target, index) => ({ ...target, box: grown[index] ?? target.box }));
  const sideMm = isThere ? LEAST_PX / (pxPerMm * zoom) : 0;
  const handles = withHandles(wholes, grown, sideMm);
  const [open, setOpen] = useState<Spot>();
  const [swapping, setSwapping] = useState<Spot>();
  const [whole, setWhole] = useState<WholeSpot>();
  const [exchanging, setExchanging] = useState<WholeSpot>();
  const trigger = useRef<HTMLElement>(null);
  const choose = (spot: Spot, element: HTMLElement | null) => {
    if (swapping?.task === spot.task && swapping.place !== spot.place) {
      changing.act({ kind: 'swap', at: swapping, with: spot.place });
      setSwapping(undefined);
      return;
    }
    trigger.current = element;
    stop();
    setOpen(spot);
  };
  const stop = () => {
    setSwapping(undefined);
    setExchanging(undefined);
  };
  const chooseWhole = (spot: WholeSpot, element: HTMLElement | null) => {
    const first = exchanging && wholeAt(held.tasks, exchanging);
    const second = wholeAt(held.tasks, spot);
    if (first && second && exchanging.task === spot.task && first !== second) {
      const { task } = spot;
      changing.act({ kind: 'exchange', task, one: first.path, other: second.path });
      stop();
      return;
    }
    trigger.current = element;
    stop();
    setWhole(spot);
  };
  const wholeNow = whole && wholeAt(held.tasks, whole);
  const swapName = exchanging
    ? wholeAt(held.tasks, exchanging)?.name
    : swapping && nameOf(held.tasks[swapping.task], swapping.place);
  const size = { '--zoom': zoom, '--width-mm': shown.widthMm, '--height-mm': shown.heightMm };
  // One sheet that changes, not one laid upon another.
  const lying = { ...shown, svg: held.svg, code: 'changing', title: words.tools };
  return (
    <div className="change-place">
      <div ref={pane} className="tap-pane" style={size as CSSProperties} data-bigger={zoom > 1}>
        <Paper shown={lying} isMaking={false}>
          {held.tasks.map((task, index) => (
            <Targets
              // biome-ignore lint/suspicious/noArrayIndexKey: tasks have no name but their place
              key={index}
              number={index}
              task={task}
              targets={targets.filter((target) => target.task === index)}
              chosen={swapping ?? open}
              onChoose={choose}
            >
              <WholeTargets
                number={index}
                wholes={task.wholes}
                targets={handles.filter((handle) => handle.task === index)}
                chosen={exchanging ?? whole}
                onChoose={chooseWhole}
              />
            </Targets>
          ))}
        </Paper>
      </div>
      <EmptyPlaces tasks={held.tasks} onChoose={choose} />
      {swapName === undefined ? null : (
        <p className="change-swap" role="status">
          {words.swapWith(swapName)}{' '}
          <PassingButton className="quiet" onPress={stop} next={() => trigger.current}>
            {words.stopSwap}
          </PassingButton>
        </p>
      )}
      {whole && wholeNow ? (
        <WholeChoices
          key={`${whole.task} ${wholeNow.path.join('.')}`}
          maker={maker}
          changing={changing}
          task={whole.task}
          whole={wholeNow}
          trigger={trigger}
          onSwap={() => setExchanging(whole)}
          onPlace={(spot) => {
            setWhole(undefined);
            setOpen(spot);
          }}
          onClose={() => setWhole(undefined)}
        />
      ) : null}
      {open ? (
        <ChangeChoices
          key={`${open.task} ${open.place}`}
          maker={maker}
          changing={changing}
          at={open}
          trigger={trigger}
          onSwap={() => setSwapping(open)}
          onClose={() => setOpen(undefined)}
        />
      ) : null}
    </div>
  );
}

interface TargetsProps {
  readonly number: number;
  readonly task: HeldTask;
  readonly targets: readonly ChangeTarget[];
  readonly chosen: Spot | undefined;
  readonly onChoose: (spot: Spot, element: HTMLElement | null) => void;
  readonly children: ReactNode;
}

/** One stop of the Tab key for each task; the arrow keys go from figure to figure. */
function Targets({ number, task, targets, chosen, onChoose, children }: TargetsProps) {
  const wrong = new Set(task.problems.flatMap(({ places }) => places));
  return (
    <Toolbar className="task-targets" aria-label={words.task(number + 1)}>
      {targets.map(({ place, box }) => {
        const held = [...task.places, ...task.empty].find((each) => each.place === place);
        const isChosen = chosen?.task === number && chosen.place === place;
        return (
          <Button
            key={place}
            className="target change-target"
            style={styleOf(box)}
            aria-label={labelOf(number, held, wrong.has(place))}
            data-wrong={wrong.has(place)}
            data-locked={held?.isLocked ?? false}
            data-chosen={isChosen}
            onPress={({ target }) =>
              onChoose({ task: number, place }, target instanceof HTMLElement ? target : null)
            }
          />
        );
      })}
      {children}
    </Toolbar>
  );
}

function labelOf(task: number, held: HeldPlace | undefined, isWrong: boolean): string {
  return words.target(task + 1, held?.name ?? '', [
    ...(held?.isLocked ? (['locked'] as const) : []),
    ...(isWrong ? (['lookHere'] as const) : []),
  ]);
}

function nameOf(task: HeldTask | undefined, place: number): string {
  const all = [...(task?.places ?? []), ...(task?.empty ?? [])];
  return all.find((each) => each.place === place)?.name ?? '';
}
