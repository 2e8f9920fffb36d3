// Beside the sheet that is changed by changing: the proof of each task as it now is, the repair, undo and redo.
import { type RefObject, useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Heading } from 'react-aria-components/Heading';
import type { Maker } from '../making/maker.ts';
import { PassingButton } from '../passing-button.tsx';
import { newSeed } from '../recipe/use-recipe.ts';
import { capital } from '../words.ts';
import type { HeldTask } from './change-talk.ts';
import type { Changing } from './use-changing.ts';
import { words } from './words.ts';

export interface ChangingProofProps {
  readonly maker: Maker;
  readonly changing: Changing;
}

export function ChangingProof({ maker, changing }: ChangingProofProps) {
  const { held, objection } = changing;
  return (
    <section className="proof change-proof" aria-label={words.tools}>
      <p>{words.help}</p>
      <div className="row">
        <Button className="plain" isDisabled={!changing.canUndo} onPress={changing.undo}>
          {words.undo}
        </Button>
        <Button className="plain" isDisabled={!changing.canRedo} onPress={changing.redo}>
          {words.redo}
        </Button>
      </div>
      <div className="change-verdicts" aria-live="polite">
        {objection === '' ? null : <p className="warning">{capital(objection)}</p>}
        {changing.isKept ? null : <p className="warning">{words.notKept}</p>}
        {held.tasks.map((task, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: tasks have no name but their place
          <TaskProof key={index} maker={maker} changing={changing} task={task} number={index} />
        ))}
      </div>
      <p>{held.hardness}</p>
      <p>{words.harder(held.logits.now - held.logits.before)}</p>
    </section>
  );
}

interface TaskProofProps extends ChangingProofProps {
  readonly task: HeldTask;
  /** From 0. */
  readonly number: number;
}

function TaskProof({ maker, changing, task, number }: TaskProofProps) {
  const locked = task.places.filter(({ isLocked }) => isLocked).length;
  const redraw = useRef<HTMLButtonElement>(null);
  return (
    <div className="change-task" data-state={task.state}>
      <Heading level={3} className="field-label">
        {words.task(number + 1)}
      </Heading>
      <p className="checked">
        {task.isChanged || task.state !== 'certain' ? words.state[task.state] : words.unchanged}
      </p>
      {task.problems.map(({ sentence }) => (
        <p key={sentence} className="warning">
          {sentence}
        </p>
      ))}
      {task.state === 'certain' ? null : (
        <Mend maker={maker} changing={changing} task={number} beside={redraw} />
      )}
      <Button
        ref={redraw}
        className="quiet change-redraw"
        aria-label={words.redrawTask(number + 1)}
        onPress={() => changing.act({ kind: 'redraw', task: number, seed: newSeed() })}
      >
        {words.redraw}
      </Button>
      {locked > 0 ? <span className="change-locked">{words.lockedStay(locked)}</span> : null}
    </div>
  );
}

interface MendProps extends ChangingProofProps {
  readonly task: number;
  /** The button that is left when this has gone. */
  readonly beside: RefObject<HTMLElement | null>;
}

/** The smallest repair, once it is found. */
function Mend({ maker, changing, task, beside }: MendProps) {
  const [sentence, setSentence] = useState<string>();
  const { under } = changing;
  const done = JSON.stringify(under.work);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked for again after each deed
  useEffect(() => {
    let isWanted = true;
    setSentence(undefined);
    maker.ask('mend', { ...under, task }).then((reply) => {
      if (isWanted) setSentence(reply.ok ? reply.value : '');
    });
    return () => {
      isWanted = false;
    };
  }, [maker, task, done]);
  // An answer that is another one than before may be just what was wanted.
  const isNeeded = changing.held.tasks[task]?.state === 'uncertain';
  if (sentence === undefined) return isNeeded ? <p>{words.looking}</p> : null;
  if (sentence === '') return isNeeded ? <p>{words.noRepair}</p> : null;
  return (
    <div className="change-mend">
      <p>{sentence}</p>
      <PassingButton
        className="plain"
        aria-label={words.repairTask(task + 1, sentence)}
        onPress={() => changing.act({ kind: 'repair', task })}
        next={() => beside.current}
      >
        {words.repair}
      </PassingButton>
    </div>
  );
}
