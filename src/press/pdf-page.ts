// One page into a document: its content, marked by the parts of the structure tree that it belongs to.
import { compose, IDENTITY, pointsFromMm } from '../base/index.ts';
import type { Group, Page, SceneNode } from '../page/index.ts';
import type { Drawing } from './drawing.ts';
import { factorText } from './numbers.ts';
import type { Operators } from './operators.ts';
import { type Leaf, leafAt, type Place, writeLeaves } from './pdf-content.ts';
import type { Pen } from './pdf-drawing.ts';
import type { Lettering } from './pdf-lettering.ts';
import type { Outline } from './pdf-outline.ts';
import type { PageTree } from './pdf-pages.ts';
import type { Stamps } from './pdf-stamps.ts';
import type { Element, ElementFacts, Structure } from './pdf-structure.ts';
import { wellFormed } from './xml-text.ts';

/** Elements of the structure tree (ISO 32000, 14.8.4) for the roles of groups. */
const ELEMENTS: ReadonlyMap<string | undefined, string> = new Map([
  ['heading-1', 'H1'],
  ['heading-2', 'H2'],
  ['paragraph', 'P'],
  ['list', 'L'],
  ['list-item', 'LI'],
  ['list-lead', 'Lbl'],
  ['list-words', 'LBody'],
]);

/** What pages of one document share. */
export interface DocumentParts {
  readonly lettering: Lettering;
  readonly structure: Structure;
  readonly outline: Outline;
  readonly tree: PageTree;
  /** Filled anew by each page. */
  readonly content: Operators;
  /** Filled anew by each drawing of it. */
  readonly drawing: Drawing;
  readonly stamps: Stamps;
}

/** The page that is being written. */
interface Writing extends DocumentParts {
  readonly pen: Pen;
  /** What tells a reader nothing and waits to be written before the next element. */
  readonly artifacts: Leaf[];
}

/** Adds the page to the document, and its parts to the document's structure. */
export function writePage(page: Page, document: DocumentParts): void {
  const { structure, outline, tree, content, stamps } = document;
  const id = tree.start();
  structure.startPage(id);
  stamps.startPage();
  const title = wellFormed(page.title);
  const size = [page.widthMm, page.heightMm].map(pointsFromMm);
  const parts = partTitles(page.nodes);
  const isParted = parts.length > 0;
  for (const part of isParted ? parts : [title]) outline.add(part, id);
  content.clear();
  content.text(`${UNIT} 0 0 -${UNIT} 0 ${factorText(pointsFromMm(page.heightMm))} cm\n`);
  const section = structure.open('Sect', structure.root, isParted ? {} : { title });
  const writing: Writing = { ...document, pen: { x: 0, y: 0 }, artifacts: [] };
  for (const node of page.nodes)
    writeNode(node, { transform: IDENTITY, clips: [], group: undefined }, section, writing);
  writeArtifacts(writing);
  structure.close(section);
  tree.finish(id, size, content.written, structure.endPage());
}

/** A hundredth of a millimetre in points. */
const UNIT = pointsFromMm(0.01).toFixed(9).slice(1);

/** The titles of parts of a page that stand for themselves, in order; no picture has any. */
function partTitles(nodes: readonly SceneNode[], titles: string[] = []): readonly string[] {
  for (const node of nodes) {
    if (node.kind !== 'group' || node.alt !== undefined) continue;
    if (node.title === undefined) partTitles(node.children, titles);
    else titles.push(wellFormed(node.title));
  }
  return titles;
}

function writeNode(node: SceneNode, place: Place, parent: Element, writing: Writing): void {
  if (node.kind === 'shape') writing.artifacts.push(leafAt(node, place));
  else if (node.kind === 'text') writeElement('P', [leafAt(node, place)], parent, writing, {});
  else writeGroup(node, place, parent, writing);
}

/** A group with `alt` is one figure, whatever is in it; others pass on or become elements by their role. */
function writeGroup(group: Group, outer: Place, parent: Element, writing: Writing): void {
  if (group.alt !== undefined) {
    const alt = wellFormed(group.alt);
    writeElement('Figure', leavesOf(group, outer), parent, writing, { alt });
    return;
  }
  const type = group.title === undefined ? ELEMENTS.get(group.role) : 'Sect';
  const place = placeIn(group, outer);
  if (type === undefined) {
    for (const child of group.children) writeNode(child, place, parent, writing);
  } else if (type !== 'Sect' && group.children.every((child) => child.kind !== 'group')) {
    writeElement(type, leavesOf(group, outer), parent, writing, {});
  } else {
    const titled = group.title === undefined ? {} : { title: wellFormed(group.title) };
    const element = writing.structure.open(type, parent, titled);
    for (const child of group.children) writeNode(child, place, element, writing);
    writing.structure.close(element);
  }
}

/** One element with one stretch of content; what is not shown letter by letter is said in its actual text. */
function writeElement(
  type: string,
  leaves: readonly Leaf[],
  parent: Element,
  writing: Writing,
  facts: ElementFacts,
): void {
  writeArtifacts(writing);
  const { structure, content, lettering } = writing;
  const isPlain = leaves.every(
    ({ node }) => node.kind !== 'text' || lettering.plainly(node) !== undefined,
  );
  const said = isPlain ? facts : { ...facts, actual: wellFormed(wordsOf(leaves)) };
  const element = structure.open(type, parent, said);
  content.text(`/${type}<</MCID ${structure.mark(element)}>>BDC\n`);
  writeLeaves(leaves, writing);
  content.text('EMC\n');
  structure.close(element);
}

function wordsOf(leaves: readonly Leaf[]): string {
  return leaves.flatMap(({ node }) => (node.kind === 'text' ? [node.text] : [])).join(' ');
}

function writeArtifacts(writing: Writing): void {
  const { content, artifacts } = writing;
  if (artifacts.length === 0) return;
  content.text('/Artifact BMC\n');
  writeLeaves(artifacts, writing);
  content.text('EMC\n');
  artifacts.length = 0;
}

function leavesOf(node: SceneNode, place: Place, leaves: Leaf[] = []): Leaf[] {
  if (node.kind !== 'group') leaves.push(leafAt(node, place));
  else {
    const inner = placeIn(node, place);
    for (const child of node.children) leavesOf(child, inner, leaves);
  }
  return leaves;
}

function placeIn(group: Group, outer: Place): Place {
  const { transform, clip, role } = group;
  const inner = transform ? compose(outer.transform, transform) : outer.transform;
  return {
    transform: inner,
    clips: clip ? [...outer.clips, { path: clip, transform: inner }] : outer.clips,
    group: role === undefined ? outer.group : group,
  };
}
