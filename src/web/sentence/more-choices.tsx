// What else the activity can be asked for, folded away until wanted: one short sentence each.
import { useId } from 'react';
import { Button } from 'react-aria-components/Button';
import { Chips } from '../children/chips.tsx';
import { Fold } from '../fold.tsx';
import type { House } from '../house/house.ts';
import type { ParameterCard } from '../making/protocol.ts';
import { withGoals, withToCut } from '../recipe/entries.ts';
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
      <ul className="further">
        {further.map((parameter) => (
          <Further key={parameter.name} parameter={parameter} props={props} />
        ))}
        <ColourChips {...props} />
        <LayoutChoices {...props} />
        <AtHandSwitch entries={entries} edit={edit} house={house} />
      </ul>
      <Button
        className="quiet"
        isDisabled={!isOwn}
        onPress={() => edit({ ...entries, changes: {} })}
      >
        {words.ownChoices}
      </Button>
      <Chips
        label={words.toCut}
        help={words.toCutHelp}
        names={words.toCutNames}
        chosen={CUT_CHOICES.filter((kind) => entries.toCut?.includes(kind))}
        onChange={(toCut) => edit(withToCut(entries, toCut))}
        several
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
