// The page itself, at true proportions, on the table.
import type { CSSProperties, ReactNode } from 'react';
import type { Shown } from '../making/protocol.ts';
import { words } from '../words.ts';

/** Until the first page is there, a blank one of ISO 216 A4 keeps its place. */
const BLANK = { widthMm: 210, heightMm: 297 };

export interface PaperProps {
  readonly shown: Shown | undefined;
  readonly isMaking: boolean;
  /** What lies over the page. */
  readonly children?: ReactNode;
}

export function Paper({ shown, isMaking, children }: PaperProps) {
  const { widthMm, heightMm } = shown ?? BLANK;
  const size = { '--width-mm': widthMm, '--height-mm': heightMm } as CSSProperties;
  return (
    <figure
      className="paper"
      style={size}
      data-pile={(shown?.sheets ?? 1) > 1 ? 'yes' : 'no'}
      aria-busy={isMaking}
    >
      {shown === undefined ? (
        <p className="blank-page">{isMaking ? words.blankPage : words.noPage}</p>
      ) : (
        <div
          key={`${shown.code} ${shown.title}`}
          className="sheet"
          // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by this program's own press
          dangerouslySetInnerHTML={{ __html: shown.svg }}
        />
      )}
      {children}
      <figcaption className="unseen">{shown?.title}</figcaption>
    </figure>
  );
}
