// Beside the sheet that is changed by hand: the proof of each task as it now is, the repair, undo and redo.
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Heading } from 'react-aria-components/Heading';
import type { Maker } from '../making/maker.ts';
import { capital } from '../words.ts';
import type { HeldTask } from './hand-talk.ts';
import type { Hand } from './use-hand.ts';
import { words } from './words.ts';

export interface HandProofProps {
  readonly maker: Maker;
  readonly hand: Hand;
}

export function HandProof({ maker, hand }: HandProofProps) {
  const { held, objection } = hand;
  return (
    <section className="proof hand-proof" aria-label={words.tools}>
      <p>{words.help}</p>
      <div className="row">
        <Button className="plain" isDisabled={!hand.canUndo} onPress={hand.undo}>
          {words.undo}
        </Button>
        <Button className="plain" isDisabled={!hand.canRedo} onPress={hand.redo}>
          {words.redo}
        </Button>
      </div>
      <div className="hand-verdicts" aria-live="polite">
        {objection === '' ? null : <p className="warning">{capital(objection)}</p>}
        {held.tasks.map((task, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: tasks have no name but their place
          <TaskProof key={index} maker={maker} hand={hand} task={task} number={index} />
        ))}
      </div>
      <p>{held.hardness}</p>
      <p>{words.harder(held.logits.now - held.logits.before)}</p>
    </section>
  );
}

interface TaskProofProps extends HandProofProps {
  readonly task: HeldTask;
  /** From 0. */
  readonly number: number;
}

function TaskProof({ maker, hand, task, number }: TaskProofProps) {
  const locked = task.places.filter(({ isLocked }) => isLocked).length;
  return (
    <div className="hand-task" data-state={task.state}>
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
      {task.state === 'certain' ? null : <Mend maker={maker} hand={hand} task={number} />}
      <Button
        className="quiet hand-redraw"
        aria-label={words.redrawTask(number + 1)}
        onPress={() => hand.act({ kind: 'redraw', task: number, seed: newSeed() })}
      >
        {words.redraw}
      </Button>
      {locked > 0 ? <span className="hand-locked">{words.redrawHelp(locked)}</span> : null}
    </div>
  );
}

/** A seed that nobody chose: a whole number from 0 to 2^32 − 1. */
function newSeed(): number {
  const [seed = 0] = crypto.getRandomValues(new Uint32Array(1));
  return seed;
}

/** The smallest repair, once it is found. */
function Mend({ maker, hand, task }: HandProofProps & { readonly task: number }) {
  const [sentence, setSentence] = useState<string>();
  const { under } = hand;
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
  const isNeeded = hand.held.tasks[task]?.state === 'uncertain';
  if (sentence === undefined) return isNeeded ? <p>{words.looking}</p> : null;
  if (sentence === '') return isNeeded ? <p>{words.noRepair}</p> : null;
  return (
    <div className="hand-mend">
      <p>{sentence}</p>
      <Button
        className="plain"
        aria-label={words.repairTask(task + 1, sentence)}
        onPress={() => hand.act({ kind: 'repair', task })}
      >
        {words.repair}
      </Button>
    </div>
  );
}
