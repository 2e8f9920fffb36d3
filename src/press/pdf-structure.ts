// The tree of structure of a document (ISO 32000, 14.7): an element leaves when it is closed.
import type { OpenDocument } from './pdf-document.ts';
import type { PdfReference } from './pdf-library.js';
import { pdfText } from './pdf-text.ts';

export interface ElementFacts {
  readonly title?: string;
  readonly alt?: string;
  readonly actual?: string;
}

/** An element that is open. */
export interface Element {
  readonly id: number;
  readonly words: string;
  /** Elements within it, and marks of the page. */
  readonly kids: string[];
}

export interface Structure {
  readonly root: Element;
  readonly startPage: (page: number) => void;
  readonly open: (type: string, parent: Element, facts: ElementFacts) => Element;
  /** The mark of a stretch of the page's content that belongs to the element. */
  readonly mark: (element: Element) => number;
  readonly close: (element: Element) => void;
  /** By which the page says where its marks are found. */
  readonly endPage: () => number;
  readonly end: () => void;
}

export function structureOf({ library, objects, newId, put }: OpenDocument): Structure {
  const tree = library._root.data.StructTreeRoot as PdfReference;
  const document = library.ref();
  const root = { id: document.id, words: `/S/Document/P ${tree.id} 0 R`, kids: [] };
  /** The objects that list which element each mark of a page belongs to. */
  const parents: number[] = [];
  let [page, marked] = [0, [] as number[]];
  const textOf = ({ words, kids }: Element) => `<<${words}/K[${kids.join(' ')}]>>`;
  return {
    root,
    startPage: (id) => {
      [page, marked] = [id, []];
    },
    open: (type, parent, facts) => {
      const id = newId();
      parent.kids.push(`${id} 0 R`);
      const words = `/S/${type}/P ${parent.id} 0 R/Pg ${page} 0 R${factsText(facts)}`;
      return { id, words, kids: [] };
    },
    mark: ({ id, kids }) => {
      const mark = marked.push(id) - 1;
      kids.push(String(mark));
      return mark;
    },
    close: (element) => objects.put(element.id, textOf(element)),
    endPage: () => {
      const id = newId();
      objects.put(id, `[${marked.map((element) => `${element} 0 R`).join(' ')}]`);
      return parents.push(id) - 1;
    },
    end: () => {
      put(document, textOf(root));
      const numbers = library.ref();
      put(numbers, `<</Nums[${parents.map((id, key) => `${key} ${id} 0 R`).join(' ')}]>>`);
      const facts = { K: document, ParentTree: numbers, ParentTreeNextKey: parents.length };
      Object.assign(tree.data, facts);
    },
  };
}

function factsText({ title, alt, actual }: ElementFacts): string {
  const said = (key: string, words?: string) =>
    words === undefined ? '' : `/${key}${pdfText(words)}`;
  return said('T', title) + said('Alt', alt) + said('ActualText', actual);
}
