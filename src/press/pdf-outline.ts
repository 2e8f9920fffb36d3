// The outline of a document: each item leaves as soon as the next one is known.
import type { OpenDocument } from './pdf-document.ts';
import type { PdfReference } from './pdf-library.js';
import { pdfText } from './pdf-text.ts';

export interface Outline {
  /** `page` is the number of its object. */
  readonly add: (title: string, page: number) => void;
  readonly end: () => void;
}

export function outlineOf({ library, put }: OpenDocument): Outline {
  const root = library.outline.dictionary;
  let first: PdfReference | undefined;
  let last: { readonly item: PdfReference; readonly words: string } | undefined;
  const endLast = (more: string) => {
    if (last) put(last.item, `<<${last.words}${more}>>`);
  };
  return {
    add: (title, page) => {
      const item = library.ref();
      const before = last ? `/Prev ${last.item.id} 0 R` : '';
      endLast(`/Next ${item.id} 0 R`);
      const words = `/Title${pdfText(title)}/Parent ${root.id} 0 R/Dest[${page} 0 R/Fit]${before}`;
      last = { item, words };
      first ??= item;
    },
    end: () => {
      endLast('');
      if (!first || !last) return;
      Object.assign(root.data, { First: first, Last: last.item });
      Object.assign(library._root.data, { Outlines: root, PageMode: 'UseOutlines' });
    },
  };
}
