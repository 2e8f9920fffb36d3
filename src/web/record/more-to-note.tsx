// What may be noted besides, folded away until wanted.
import { Chips } from '../children/chips.tsx';
import { TextField } from '../children/text-field.tsx';
import { Fold } from '../fold.tsx';
import type { OutcomesProps } from './outcomes.tsx';
import { outcomeOf, takesInstead } from './result-draft.ts';
import { isMoreNoted } from './result-draft-left.ts';
import { words } from './words.ts';

type MoreToNoteProps = Omit<OutcomesProps, 'taps'>;

export function MoreToNote({ sheet, draft, change }: MoreToNoteProps) {
  return (
    <Fold
      className="more-to-note"
      title={words.more}
      level={3}
      isOutward
      // Something is noted at the start only where it came over from the page before.
      defaultExpanded={isMoreNoted(draft)}
    >
      <div className="fields">
        <Instead sheet={sheet} draft={draft} change={change} />
        <Chips
          label={words.help}
          names={words.helps}
          chosen={draft.help}
          onChange={(help) => change({ help })}
        />
        <Chips
          label={words.mood}
          names={words.moods}
          chosen={draft.mood}
          onChange={(mood) => change({ mood })}
        />
        <TextField
          label={words.minutes}
          value={draft.minutes}
          most={3}
          isNumber
          onChange={(minutes) => change({ minutes })}
        />
        <TextField
          label={words.note}
          value={draft.note}
          most={2000}
          isLong
          onChange={(note) => change({ note })}
        />
      </div>
    </Fold>
  );
}

function Instead({ sheet, draft, change }: MoreToNoteProps) {
  const tasks = Array.from({ length: sheet.tasks }, (_, task) => task);
  return tasks
    .filter((task) => takesInstead(outcomeOf(draft, task)))
    .map((task) => (
      <TextField
        key={task}
        label={words.instead(task + 1)}
        help={words.insteadHelp}
        value={draft.instead[task] ?? ''}
        most={80}
        onChange={(label) => change({ instead: { ...draft.instead, [task]: label } })}
      />
    ));
}
