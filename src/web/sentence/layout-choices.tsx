// How the page is laid out and drawn: size, hand, ink, margin, one short sentence each.
import { memo, type ReactNode, useId } from 'react';
import type { Catalogue } from '../making/protocol.ts';
import { LAYOUT_CHOICES, type LayoutChoice, USUAL_LAYOUT, withLayout } from '../recipe/entries.ts';
import type { Edit } from '../recipe/use-recipe.ts';
import { words } from '../words.ts';
import { ChoiceControl } from './choice-control.tsx';
import type { ControlsProps } from './shell-controls.tsx';
import { type InkAsked, useInked } from './use-inked.ts';

/** `ink`: of which sheet it is to be told how much is inked; absent: of none. */
export function LayoutChoices({
  ink,
  ...props
}: ControlsProps & { readonly ink: InkAsked | undefined }) {
  const { catalogue, entries, edit, objectionTo } = props;
  return LAYOUT_CHOICES.map((name) => (
    <Layout
      key={name}
      name={name}
      value={entries[name] ?? USUAL_LAYOUT[name]}
      catalogue={catalogue}
      objection={objectionTo(name)}
      edit={edit}
    >
      {name === 'ink' && ink ? <InkShare {...ink} /> : null}
    </Layout>
  ));
}

function InkShare(asked: InkAsked) {
  const inked = useInked(asked);
  return inked ? ` ${words.inked(inked)}` : null;
}

interface LayoutProps {
  readonly name: LayoutChoice;
  readonly value: string;
  readonly catalogue: Catalogue;
  readonly objection: string | undefined;
  readonly edit: Edit;
  /** Follows what is said of it. */
  readonly children: ReactNode;
}

/** Drawn anew only when it is to show something else. */
const Layout = memo(({ name, value, catalogue, objection, edit, children }: LayoutProps) => {
  const help = useId();
  const said = words.layouts[name];
  const names: Readonly<Record<string, string>> = said.choices;
  return (
    <li aria-describedby={help}>
      <div className="asked">
        <span>{said.label}</span>{' '}
        <ChoiceControl
          label={said.label}
          value={value}
          choices={catalogue.layouts[name].map((each) => ({
            value: each,
            name: names[each] ?? each,
          }))}
          objection={objection}
          onChange={(next) => edit((now) => withLayout(now, name, next))}
        />
      </div>
      <p id={help} className="help">
        {said.help}
        {children}
      </p>
    </li>
  );
});
