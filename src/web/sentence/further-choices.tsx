// What else can be asked for beside the sentence: one short sentence each.
import { memo, type ReactNode, useId } from 'react';
import { Button } from 'react-aria-components/Button';
import { Chips } from '../children/chips.tsx';
import type { House } from '../house/house.ts';
import type { Catalogue, ParameterCard } from '../making/protocol.ts';
import { type Entries, isPrinted, withGoals, withToCut } from '../recipe/entries.ts';
import type { Edit } from '../recipe/use-recipe.ts';
import { isInSentence, words } from '../words.ts';
import { AtHandSwitch } from './at-hand-switch.tsx';
import { ColourChips } from './colour-chips.tsx';
import { LayoutChoices } from './layout-choices.tsx';
import { parameterControl } from './parameter-controls.tsx';
import type { ControlsProps } from './shell-controls.tsx';
import type { InkAsked } from './use-inked.ts';

export interface MoreChoicesProps extends ControlsProps {
  readonly house: House;
  /** Of which sheet it can be told how much is inked; absent: of none. */
  readonly ink: InkAsked | undefined;
}

export function FurtherChoices({ house, ink, ...props }: MoreChoicesProps) {
  const { card, catalogue, entries, edit } = props;
  const further = card.parameters.filter(({ name }) => !isInSentence(name));
  const isOwn = Object.keys(entries.changes).length > 0;
  return (
    <>
      <Choices title={words.moreAsked}>
        {further.map((parameter) => (
          <Further key={parameter.name} parameter={parameter} props={props} />
        ))}
      </Choices>
      <Button
        className="quiet"
        isDisabled={!isOwn}
        onPress={() => edit((now) => ({ ...now, changes: {} }))}
      >
        {words.ownChoices}
      </Button>
      <Choices title={words.moreLayout}>
        <LayoutChoices {...props} ink={ink} />
      </Choices>
      <Choices title={words.moreHouse}>
        <ColourChips colours={catalogue.colours} chosen={entries.colours} edit={edit} />
        <AtHandSwitch isOn={entries.atHand === true} edit={edit} house={house} />
      </Choices>
      <ToCut chosen={entries.toCut} isPrinted={isPrinted(entries)} edit={edit} />
      <Goals frameworks={catalogue.frameworks} chosen={entries.goals} edit={edit} />
    </>
  );
}

interface ToCutProps {
  readonly chosen: Entries['toCut'];
  readonly isPrinted: boolean;
  readonly edit: Edit;
}

const ToCut = memo(({ chosen, isPrinted, edit }: ToCutProps) => (
  <Chips
    label={words.toCut}
    help={isPrinted ? words.toCutHelp : words.toCutPrinted}
    names={words.toCutNames}
    chosen={CUT_CHOICES.filter((kind) => chosen?.includes(kind))}
    onChange={(toCut) => edit((now) => withToCut(now, toCut))}
    several
    isDisabled={!isPrinted}
  />
));

interface GoalsProps extends Pick<Catalogue, 'frameworks'> {
  readonly chosen: Entries['goals'];
  readonly edit: Edit;
}

const Goals = memo(({ frameworks, chosen = [], edit }: GoalsProps) => (
  <Chips
    label={words.goals}
    help={words.goalsHelp}
    names={frameworks}
    chosen={chosen}
    onChange={(goals) => edit((now) => withGoals(now, goals))}
    several
  />
));

const CUT_CHOICES = ['pieces', 'key-card', 'cards'] as const;

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
