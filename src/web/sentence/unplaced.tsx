// What is refused but belongs to no single control.
import type { ActivityCard, Objection } from '../making/protocol.ts';
import { LAYOUT_CHOICES } from '../recipe/entries.ts';
import { SHELL_CONTROLS } from '../words.ts';

export interface UnplacedProps {
  readonly objections: readonly Objection[];
  readonly card: ActivityCard | undefined;
}

export function Unplaced({ objections, card }: UnplacedProps) {
  const placed: readonly string[] = [
    ...SHELL_CONTROLS,
    ...LAYOUT_CHOICES,
    'group',
    ...(card?.parameters.map(({ name }) => name) ?? []),
  ];
  return (
    <div aria-live="polite">
      {objections
        .filter(({ control }) => !placed.includes(control))
        .map(({ sentence }) => (
          <p key={sentence} className="objection">
            {sentence}
          </p>
        ))}
    </div>
  );
}
