// The pages of a document as a tree: of a page that has left nothing is kept but its number.

import { factorText } from './numbers.ts';
import type { OpenDocument } from './pdf-document.ts';
import type { PdfReference } from './pdf-library.js';

/** Pages that hang on one branch. */
const PAGES_A_BRANCH = 100;

export interface PageTree {
  /** The number of the page that comes next. */
  readonly start: () => number;
  /** Writes it: its size in points, its content, and where the tree of structure finds its marks. */
  readonly finish: (
    page: number,
    size: readonly number[],
    content: Uint8Array,
    key: number,
  ) => void;
  readonly end: () => void;
}

export function pageTree(document: OpenDocument, resources: PdfReference): PageTree {
  const { library, objects, newId, put } = document;
  const root = library._root.data.Pages as PdfReference;
  const branches: PdfReference[] = [];
  let [branch, pages, count] = [library.ref(), [] as number[], 0];
  const endBranch = () => {
    const kids = pages.map((page) => `${page} 0 R`).join(' ');
    put(branch, `<</Type/Pages/Parent ${root.id} 0 R/Count ${pages.length}/Kids[${kids}]>>`);
    branches.push(branch);
  };
  return {
    start: newId,
    finish: (page, size, content, key) => {
      if (pages.length === PAGES_A_BRANCH) {
        endBranch();
        [branch, pages] = [library.ref(), []];
      }
      const contents = newId();
      objects.putStream(contents, '', content);
      const box = ['0 0', ...size.map(factorText)].join(' ');
      const parts = `/MediaBox[${box}]/Contents ${contents} 0 R/Resources ${resources.id} 0 R`;
      const place = `/Parent ${branch.id} 0 R/StructParents ${key}/Tabs/S`;
      objects.put(page, `<</Type/Page${place}${parts}>>`);
      pages.push(page);
      count += 1;
    },
    end: () => {
      endBranch();
      Object.assign(root.data, { Kids: branches, Count: count });
    },
  };
}
