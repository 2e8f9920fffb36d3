// Whether the printer keeps true size: a page to measure, and what is made up for from then on; folded away.
import { memo, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Form } from 'react-aria-components/Form';
import { TextField } from '../children/text-field.tsx';
import { Fold } from '../fold.tsx';
import type { Maker } from '../making/maker.ts';
import type { Measure, Reply } from '../making/protocol.ts';
import { sentencesOf } from '../making/reply-form.ts';
import { carriedOver, readText, useKept } from '../offline/kept.ts';
import { PassingButton, type PassingButtonProps } from '../passing-button.tsx';
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
  const measured = useRef<HTMLDivElement>(null);
  const next = () => measured.current?.querySelector<HTMLElement>('input, button');
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
        <div ref={measured}>
          {inForce === undefined ? (
            <MeasureForm key={paper} maker={maker} paper={paper} onKeep={keep} next={next} />
          ) : (
            <PassingButton className="plain" next={next} onPress={() => keep(undefined)}>
              {words.trueSize.stop}
            </PassingButton>
          )}
        </div>
        <p className="outcome" aria-live="polite">
          {outcome === '' && inForce !== undefined ? words.trueSize.inForce(inForce) : outcome}
        </p>
      </div>
    </Fold>
  );
});

interface MeasureFormProps extends TrueSizeProps, Pick<PassingButtonProps, 'next'> {
  readonly onKeep: (measuredMm: number) => void;
}

/** First how to print at true size; only then, for what is still off, the offer to make up for it. */
function MeasureForm({ maker, paper, onKeep, next }: MeasureFormProps) {
  const [text, setText] = useKept(MEASURED, readText);
  const [told, setTold] = useState<{ readonly text: string; readonly reply: Reply<Measure> }>();
  // What was told of another measure than stands there now is out of date.
  const reply = told?.text === text ? told.reply : undefined;
  const measure = reply?.ok ? reply.value : undefined;
  const check = async () => setTold({ text, reply: await maker.ask('measure', { text, paper }) });
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
        objection={reply?.ok === false ? sentencesOf(reply.objections) : ''}
        most={8}
        onChange={setText}
      />
      <Button type="submit" className="plain">
        {words.trueSize.check}
      </Button>
      <p className="outcome" aria-live="polite">
        {measure === undefined ? '' : sayingOf(measure)}
      </p>
      {measure === undefined || measure.isTrue ? null : (
        <PassingButton className="plain" next={next} onPress={() => onKeep(measure.measuredMm)}>
          {words.trueSize.correct(measure.measuredMm)}
        </PassingButton>
      )}
    </Form>
  );
}

function sayingOf({ measuredMm, isTrue }: Measure): string {
  return isTrue ? words.trueSize.isTrue(measuredMm) : words.trueSize.isOff(measuredMm);
}
