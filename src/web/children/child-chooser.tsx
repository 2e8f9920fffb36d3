// Whom a screen is about: a tap on a name, or a list of names where there are many; and where there is no child, the way to one.
import { hashOf } from '../place-names.ts';
import { ChoiceControl } from '../sentence/choice-control.tsx';
import { Chips } from './chips.tsx';
import { TryDemo } from './try-demo.tsx';
import { useGround } from './use-ground.ts';
import { words } from './words.ts';

/** More names than this are found sooner in a list (our own choice). */
const MOST_CHIPS = 5;

export interface ChildChooserProps {
  /** What the screen is for, said where there is no child yet. */
  readonly about?: string;
}

/** For the head of a screen on which children are chosen, not changed. */
export function ChildChooser({ about }: ChildChooserProps) {
  const { child } = useGround();
  if (child !== undefined) return <ChildChoice label={words.child} />;
  return (
    <div className="no-child">
      {about === undefined ? null : <p className="no-child-about">{about}</p>}
      <p>{words.noChild}</p>
      <a className="next" href={hashOf('record')}>
        {words.addInRecord}
      </a>
      <TryDemo />
    </div>
  );
}

export interface ChildChoiceProps {
  readonly label: string;
  readonly onChoose?: () => void;
}

/** The names of the children in view, of which one is always chosen. */
export function ChildChoice({ label, onChoose = () => {} }: ChildChoiceProps) {
  const { children, child, choose } = useGround();
  const take = (id: string | undefined) => {
    if (id === undefined) return;
    choose(id);
    onChoose();
  };
  return (
    <div className="child-choice">
      {children.length > MOST_CHIPS ? (
        <div className="field">
          <span className="field-label" aria-hidden="true">
            {label}
          </span>
          <ChoiceControl
            label={label}
            value={child?.id ?? ''}
            choices={children.map(({ id, nickname }) => ({ value: id, name: nickname }))}
            objection={undefined}
            onChange={take}
          />
        </div>
      ) : (
        <Chips
          label={label}
          names={Object.fromEntries(children.map(({ id, nickname }) => [id, nickname]))}
          chosen={child === undefined ? [] : [child.id]}
          isNeeded
          onChange={([id]) => take(id)}
        />
      )}
    </div>
  );
}
