// Whether the printer keeps true size: a page to measure, and what is made up for from then on; folded away.
import { memo, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Form } from 'react-aria-components/Form';
import { TextField } from '../children/text-field.tsx';
import { Fold } from '../fold.tsx';
import type { Maker } from '../making/maker.ts';
import type { Measure } from '../making/protocol.ts';
import { sentencesOf } from '../making/reply-form.ts';
import { carriedOver, readText, useKept } from '../offline/kept.ts';
import { words } from '../words.ts';
import { recallMeasure, rememberMeasure } from './measured.ts';
import { PressButtons } from './press-buttons.tsx';

const MEASURED = 'what the line measures';

export interface TrueSizeProps {
  readonly maker: Maker;
  /** The paper of the sheets in view. */
  readonly paper: string;
}

/** Drawn anew only when it is to show something else. */
export const TrueSize = memo(({ maker, paper }: TrueSizeProps) => {
  const [inForce, setInForce] = useState(recallMeasure);
  const [outcome, setOutcome] = useState('');
  const keep = (measuredMm: number | undefined) => {
    rememberMeasure(measuredMm);
    setInForce(measuredMm);
    setOutcome(
      measuredMm === undefined ? words.trueSize.stopped : words.trueSize.inForce(measuredMm),
    );
  };
  return (
    <Fold
      className="more"
      defaultExpanded={inForce !== undefined || readText(carriedOver(MEASURED)) !== ''}
      title={words.trueSize.title}
      level={2}
    >
      <div className="true-size">
        <p className="help">{words.trueSize.why}</p>
        <PressButtons
          what={{ rulerFor: paper, name: words.trueSize.fileName }}
          isReady
          isAside
          names={words.trueSize.ways}
          next="pages"
        />
        {inForce === undefined ? (
          <MeasureForm key={paper} maker={maker} paper={paper} onKeep={keep} />
        ) : (
          <Button className="plain" onPress={() => keep(undefined)}>
            {words.trueSize.stop}
          </Button>
        )}
        <p className="outcome" aria-live="polite">
          {outcome === '' && inForce !== undefined ? words.trueSize.inForce(inForce) : outcome}
        </p>
      </div>
    </Fold>
  );
});

interface MeasureFormProps extends TrueSizeProps {
  readonly onKeep: (measuredMm: number) => void;
}

/** First how to print at true size; only then, for what is still off, the offer to make up for it. */
function MeasureForm({ maker, paper, onKeep }: MeasureFormProps) {
  const [text, setText] = useKept(MEASURED, readText);
  const [measure, setMeasure] = useState<Measure>();
  const [objection, setObjection] = useState('');
  const change = (next: string) => {
    setText(next);
    setMeasure(undefined);
    setObjection('');
  };
  const check = async () => {
    const reply = await maker.ask('measure', { text, paper });
    setMeasure(reply.ok ? reply.value : undefined);
    setObjection(reply.ok ? '' : sentencesOf(reply.objections));
  };
  return (
    <Form
      validationBehavior="aria"
      onSubmit={(event) => {
        event.preventDefault();
        void check();
      }}
    >
      <TextField
        label={words.trueSize.measured}
        help={words.trueSize.measuredHelp}
        value={text}
        objection={objection}
        most={8}
        onChange={change}
      />
      <Button type="submit" className="plain">
        {words.trueSize.check}
      </Button>
      <p className="outcome" aria-live="polite">
        {measure === undefined ? '' : sayingOf(measure)}
      </p>
      {measure === undefined || measure.isTrue ? null : (
        <Button className="plain" onPress={() => onKeep(measure.measuredMm)}>
          {words.trueSize.correct(measure.measuredMm)}
        </Button>
      )}
    </Form>
  );
}

function sayingOf({ measuredMm, isTrue }: Measure): string {
  return isTrue ? words.trueSize.isTrue(measuredMm) : words.trueSize.isOff(measuredMm);
}
