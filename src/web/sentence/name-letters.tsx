// Where a sheet is about letters: a name whose letters they are, and what becomes of those that cannot be drawn.
import { Chips } from '../children/chips.tsx';
import { TextField } from '../children/text-field.tsx';
import { useNicknames } from '../house/use-nicknames.ts';
import { readText, useKept } from '../offline/kept.ts';
import { lettersIn, withName, withOwnLetters } from '../recipe/entries.ts';
import { words } from '../words.ts';
import type { ControlsProps } from './shell-controls.tsx';

export interface NameLettersProps extends ControlsProps {
  readonly notes: readonly string[];
  readonly isForGroup: boolean;
  /** Whether the page is there, so that the records may be looked through. */
  readonly isWanted: boolean;
}

/** More than any name has; what is beyond it is not taken in. */
const MOST_CHARACTERS = 200;

export function NameLetters(props: NameLettersProps) {
  const { entries } = props;
  const content = String(entries.changes.content ?? props.inForce.content ?? '');
  return props.catalogue.letterContents.includes(content) ? <NameFields {...props} /> : null;
}

function NameFields({ entries, edit, notes, isForGroup, isWanted }: NameLettersProps) {
  const [typed, setTyped] = useKept('name of letters', readText);
  const children = useNicknames(isWanted);
  const { letters = '' } = entries;
  // Another address, or a sheet that was opened by its code, has letters of its own.
  const name = lettersIn(typed) === letters ? typed : letters;
  const take = (next: string) => {
    setTyped(next);
    edit((now) => withName(now, next));
  };
  return (
    <div className="name-letters">
      <TextField
        label={words.name.label}
        help={words.name.help}
        value={name}
        most={MOST_CHARACTERS}
        onChange={take}
      />
      {children.length === 0 ? null : (
        <Chips
          label={words.name.children}
          names={Object.fromEntries(children.map((nickname, index) => [String(index), nickname]))}
          chosen={children.flatMap((nickname, index) => (nickname === name ? [String(index)] : []))}
          onChange={([chosen]) => take(children[Number(chosen ?? -1)] ?? '')}
        />
      )}
      {isForGroup ? (
        <Chips
          label={words.name.own}
          help={words.name.ownHelp}
          names={{ yes: words.name.ownName }}
          chosen={entries.ownLetters === 'yes' ? ['yes'] : []}
          onChange={(chosen) => edit((now) => withOwnLetters(now, chosen.length > 0))}
        />
      ) : null}
      <ul className="name-notes" aria-live="polite">
        {notes.map((note) => (
          <li key={note} className="help">
            {note}
          </li>
        ))}
      </ul>
    </div>
  );
}
