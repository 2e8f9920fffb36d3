// What lies on the table: the page, which of them it is, and its proof line, drawn before all that stands beside them.
import type { ReactNode } from 'react';
import type { Pages } from '../making/pages.ts';
import { useShownFirst } from '../making/use-shown.ts';
import { PageBar, type PageBarProps } from './page-bar.tsx';
import { Paper } from './paper.tsx';
import { Proof, type ProofProps } from './proof.tsx';

export interface LyingProps
  extends ProofProps,
    Pick<PageBarProps, 'wanted' | 'onView' | 'onPlace' | 'onLeaf' | 'toggle'> {
  readonly pages: Pages;
  readonly isMaking: boolean;
  /** Lies there instead, where the sheet is being changed. */
  readonly children: ReactNode;
}

export function Lying({ pages, isMaking, shown, children, ...props }: LyingProps) {
  const first = useShownFirst(pages, shown);
  const { card, view, isRefused, ...turns } = props;
  const hasCut = (first?.toCut.had.length ?? 0) > 0;
  return (
    <>
      <PageBar
        {...turns}
        view={view === 'cut' && !hasCut ? 'sheet' : view}
        hasCut={hasCut}
        child={first?.child}
        place={first?.place ?? 1}
        places={first?.places ?? 1}
        leaf={first?.leaf ?? 1}
        leaves={first?.leaves ?? 1}
      />
      {children ?? (
        <>
          <Paper shown={first} isMaking={isMaking} />
          <Proof shown={first} card={card} view={view} isRefused={isRefused} />
        </>
      )}
    </>
  );
}
