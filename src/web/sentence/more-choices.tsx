// What else the activity can be asked for, folded away until wanted: one short sentence each.
import { type ReactNode, useId } from 'react';
import { Button } from 'react-aria-components/Button';
import { Chips } from '../children/chips.tsx';
import { Fold } from '../fold.tsx';
import type { House } from '../house/house.ts';
import type { ParameterCard } from '../making/protocol.ts';
import { isPrinted, withGoals, withToCut } from '../recipe/entries.ts';
import { SENTENCE_PARAMETERS, words } from '../words.ts';
import { AtHandSwitch } from './at-hand-switch.tsx';
import { ColourChips } from './colour-chips.tsx';
import { LayoutChoices } from './layout-choices.tsx';
import { parameterControl } from './parameter-controls.tsx';
import type { ControlsProps } from './shell-controls.tsx';

export function MoreChoices(props: ControlsProps & { readonly house: House }) {
  const { card, entries, edit, house } = props;
  const further = card.parameters.filter(({ name }) => !IN_THE_SENTENCE.includes(name));
  const isOwn = Object.keys(entries.changes).length > 0;
  return (
    <Fold className="more" title={words.more} level={2}>
      <Choices title={words.moreAsked}>
        {further.map((parameter) => (
          <Further key={parameter.name} parameter={parameter} props={props} />
        ))}
      </Choices>
      <Button
        className="quiet"
        isDisabled={!isOwn}
        onPress={() => edit({ ...entries, changes: {} })}
      >
        {words.ownChoices}
      </Button>
      <Choices title={words.moreLayout}>
        <LayoutChoices {...props} />
      </Choices>
      <Choices title={words.moreHouse}>
        <ColourChips {...props} />
        <AtHandSwitch entries={entries} edit={edit} house={house} />
      </Choices>
      <Chips
        label={words.toCut}
        help={isPrinted(entries) ? words.toCutHelp : words.toCutPrinted}
        names={words.toCutNames}
        chosen={CUT_CHOICES.filter((kind) => entries.toCut?.includes(kind))}
        onChange={(toCut) => edit(withToCut(entries, toCut))}
        several
        isDisabled={!isPrinted(entries)}
      />
      <Chips
        label={words.goals}
        help={words.goalsHelp}
        names={props.catalogue.frameworks}
        chosen={entries.goals ?? []}
        onChange={(goals) => edit(withGoals(entries, goals))}
        several
      />
    </Fold>
  );
}

const CUT_CHOICES = ['pieces', 'key-card', 'cards'] as const;
const IN_THE_SENTENCE: readonly string[] = SENTENCE_PARAMETERS;

/** Choices that belong together, under what they are about. */
function Choices({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <div>
      <h3 className="field-label">{title}</h3>
      <ul className="further">{children}</ul>
    </div>
  );
}

function Further({ parameter, props }: { parameter: ParameterCard; props: ControlsProps }) {
  const help = useId();
  return (
    <li aria-describedby={help}>
      <div className="asked">
        <span>{parameter.label}</span> {parameterControl(props, parameter)}
      </div>
      <p id={help} className="help">
        {parameter.help}
      </p>
    </li>
  );
}
