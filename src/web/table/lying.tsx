// What lies on the table: the page and its proof line, drawn before all that stands beside them.
import type { Pages } from '../making/pages.ts';
import { useShownFirst } from '../making/use-shown.ts';
import { Paper } from './paper.tsx';
import { Proof, type ProofProps } from './proof.tsx';

export interface LyingProps extends ProofProps {
  readonly pages: Pages;
  readonly isMaking: boolean;
}

export function Lying({ pages, isMaking, shown, ...proof }: LyingProps) {
  const first = useShownFirst(pages, shown);
  return (
    <>
      <Paper shown={first} isMaking={isMaking} />
      <Proof {...proof} shown={first} />
    </>
  );
}
