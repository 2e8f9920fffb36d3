// The proof line: what was checked, how hard the sheet is and why, and what to look out for.
import { words as changingWords } from '../changing/words.ts';
import type { ActivityCard, ParameterCard, Shown, View } from '../making/protocol.ts';
import { words } from '../words.ts';

export interface ProofProps {
  readonly shown: Shown | undefined;
  readonly card: ActivityCard | undefined;
  readonly view: View;
  readonly isRefused: boolean;
}

export function Proof({ shown, card, view, isRefused }: ProofProps) {
  const unsure = (shown?.doubts ?? []).filter(({ sheet }) => sheet === shown?.sheet);
  return (
    <section className="proof" aria-label={words.proof} aria-live="polite">
      {shown === undefined || card === undefined ? null : (
        <>
          {isRefused ? <p className="last-good">{words.lastGood}</p> : null}
          <p className="checked">
            {unsure.length > 0
              ? changingWords.sure(shown.tasks, unsure.length)
              : words.checked(shown.tasks)}
          </p>
          {unsure.length > 0 ? <p className="warning">{changingWords.notSure(unsure)}</p> : null}
          <p>{words.checkedHow(shown.tasks)}</p>
          <Hardness shown={shown} card={card} />
          {shown.alike.length > 0 ? <p className="warning">{words.alike(shown.alike)}</p> : null}
          {shown.toCut.lacking.map((kind) => (
            <p key={kind} className="warning">
              {words.nothingToCut[kind]}
            </p>
          ))}
          {view === 'answers' ? <Answers answers={shown.answers} /> : null}
        </>
      )}
    </section>
  );
}

function Hardness({ shown, card }: { readonly shown: Shown; readonly card: ActivityCard }) {
  const step = card.steps[shown.step - 1];
  if (step === undefined) return null;
  const gaveWay = card.parameters.filter(({ name }) => shown.gaveWay.includes(name));
  const changed = card.parameters.filter(
    ({ name }) => shown.values[name] !== step.values[name] && !shown.gaveWay.includes(name),
  );
  return (
    <>
      <p>{words.hard(shown.step, card.steps.length, step.age)}</p>
      <p>{shown.hardness}</p>
      <p>{shown.step === 1 ? words.firstStep : words.against(shown.step - 1, step.change)}</p>
      {changed.length > 0 ? <p>{words.apart(labelsOf(changed))}</p> : null}
      {gaveWay.length > 0 ? <p>{words.gaveWay(labelsOf(gaveWay))}</p> : null}
    </>
  );
}

function labelsOf(cards: readonly ParameterCard[]): readonly string[] {
  return cards.map(({ label }) => label);
}

function Answers({ answers }: { readonly answers: readonly string[] }) {
  return (
    // Read as one goes through them, not all aloud whenever the page changes.
    <ol className="answers" aria-live="off">
      {answers.map((answer, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: tasks have no name but their place
        <li key={index}>{answer}</li>
      ))}
    </ol>
  );
}
