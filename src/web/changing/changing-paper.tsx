// The sheet that is being changed: each figure a button over the picture, what is wrong outlined.
import '../look/taps.css';
import { type CSSProperties, type RefObject, useLayoutEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Toolbar } from 'react-aria-components/Toolbar';
import type { Spot } from '../../editing/index.ts';
import type { Shown } from '../making/protocol.ts';
import { around, type Box, LEAST_PX, targetsAt, zoomFor } from '../record/targets.ts';
import { seenBox, useWidth } from '../record/use-marks.ts';
import { Paper } from '../table/paper.tsx';
import { ChangeChoices } from './change-choices.tsx';
import type { HeldPlace, HeldTask } from './change-talk.ts';
import { EmptyPlaces } from './empty-places.tsx';
import type { Changing } from './use-changing.ts';
import { words } from './words.ts';

interface ChangeTarget extends Spot {
  readonly box: Box;
}

export interface ChangingPaperProps {
  readonly shown: Shown;
  readonly changing: Changing;
  /** Answers what a chosen figure may become. */
  readonly maker: Parameters<typeof ChangeChoices>[0]['maker'];
}

export function ChangingPaper({ shown, changing, maker }: ChangingPaperProps) {
  const pane = useRef<HTMLDivElement>(null);
  const { held } = changing;
  const found = usePlaces(pane, held.svg);
  const pxPerMm = useWidth(pane) / shown.widthMm;
  const isThere = found.length > 0 && pxPerMm > 0;
  const boxes = found.map(({ box }) => box);
  const zoom = isThere ? zoomFor(boxes, pxPerMm) : 1;
  const grown = isThere ? targetsAt(boxes, LEAST_PX / (pxPerMm * zoom)) : [];
  const targets = found.map((target, index) => ({ ...target, box: grown[index] ?? target.box }));
  const [open, setOpen] = useState<Spot>();
  const [swapping, setSwapping] = useState<Spot>();
  const trigger = useRef<HTMLElement>(null);
  const choose = (spot: Spot, element: HTMLElement | null) => {
    if (swapping?.task === spot.task && swapping.place !== spot.place) {
      changing.act({ kind: 'swap', at: swapping, with: spot.place });
      setSwapping(undefined);
      return;
    }
    trigger.current = element;
    setSwapping(undefined);
    setOpen(spot);
  };
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
            />
          ))}
        </Paper>
      </div>
      <EmptyPlaces tasks={held.tasks} onChoose={choose} />
      {swapping ? (
        <p className="change-swap" role="status">
          {words.swapWith(nameOf(held.tasks[swapping.task], swapping.place))}{' '}
          <Button className="quiet" onPress={() => setSwapping(undefined)}>
            {words.stopSwap}
          </Button>
        </p>
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
}

/** One stop of the Tab key for each task; the arrow keys go from figure to figure. */
function Targets({ number, task, targets, chosen, onChoose }: TargetsProps) {
  const wrong = new Set(task.problems.flatMap(({ places }) => places));
  return (
    <Toolbar className="task-targets" aria-label={words.task(number + 1)}>
      {targets.map(({ place, box }) => {
        const held = task.places.find((each) => each.place === place);
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

/** Where the figures lie, in mm on the page; several parts of one place count as one. */
function usePlaces(pane: RefObject<HTMLElement | null>, svg: string): readonly ChangeTarget[] {
  const [targets, setTargets] = useState<readonly ChangeTarget[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another drawing is measured anew
  useLayoutEffect(() => {
    const tasks = pane.current?.querySelectorAll('.sheet [data-role="task"]') ?? [];
    setTargets(
      [...tasks].flatMap((drawn, task) => {
        const boxes = new Map<number, Box>();
        for (const figure of drawn.querySelectorAll('[data-place]')) {
          const box = seenBox(figure);
          const place = Number(figure.getAttribute('data-place'));
          const before = boxes.get(place);
          if (box) boxes.set(place, before ? around([before, box]) : box);
        }
        return [...boxes].map(([place, box]) => ({ task, place, box }));
      }),
    );
  }, [pane, svg]);
  return targets;
}

/** In shares of the page, so that it stays at its figure however big the page is shown. */
function styleOf({ x, y, width, height }: Box): CSSProperties {
  const share = (mm: number, side: 'width' | 'height') => `calc(100% * ${mm} / var(--${side}-mm))`;
  return {
    insetInlineStart: share(x, 'width'),
    insetBlockStart: share(y, 'height'),
    inlineSize: share(width, 'width'),
    blockSize: share(height, 'height'),
  };
}
