// How the page is laid out and drawn: size, hand, ink, margin, one short sentence each.
import { useId } from 'react';
import { LAYOUT_CHOICES, type LayoutChoice, USUAL_LAYOUT, withLayout } from '../recipe/entries.ts';
import { words } from '../words.ts';
import { ChoiceControl } from './choice-control.tsx';
import type { ControlsProps } from './shell-controls.tsx';

export function LayoutChoices(props: ControlsProps) {
  return LAYOUT_CHOICES.map((name) => <Layout key={name} name={name} props={props} />);
}

function Layout({ name, props }: { readonly name: LayoutChoice; readonly props: ControlsProps }) {
  const help = useId();
  const { catalogue, entries, inked, edit, objectionTo } = props;
  const said = words.layouts[name];
  const names: Readonly<Record<string, string>> = said.choices;
  return (
    <li aria-describedby={help}>
      <div className="asked">
        <span>{said.label}</span>{' '}
        <ChoiceControl
          label={said.label}
          value={entries[name] ?? USUAL_LAYOUT[name]}
          choices={catalogue.layouts[name].map((value) => ({ value, name: names[value] ?? value }))}
          objection={objectionTo(name)}
          onChange={(value) => edit(withLayout(entries, name, value))}
        />
      </div>
      <p id={help} className="help">
        {said.help}
        {name === 'ink' && inked ? ` ${words.inked(inked)}` : null}
      </p>
    </li>
  );
}
