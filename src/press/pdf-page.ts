// One page into a document: its content, marked by the parts of the structure tree that it belongs to.
import { compose, IDENTITY, type Path, pointsFromMm, type Transform } from '../base/index.ts';
import { type Group, isSetPlainly, type Page, type SceneNode, type Text } from '../page/index.ts';
import { lettersOf } from './lettering.ts';
import { contentOf, type Leaf, type Pen } from './pdf-content.ts';
import type { Lettering } from './pdf-lettering.ts';
import type { PDFDocument, StructureElement, StructureOptions } from './pdf-library.js';
import { pdfPath } from './placing.ts';
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

interface Place {
  readonly transform: Transform;
  readonly clips: readonly string[];
}

/** The page that is being written. */
interface Writing {
  readonly document: PDFDocument;
  readonly lettering: Lettering;
  readonly pen: Pen;
  /** What tells a reader nothing and waits to be written before the next element. */
  artifacts: Leaf[];
}

/** Adds the page to the document, and its parts to the document's structure. */
export function writePage(
  page: Page,
  document: PDFDocument,
  root: StructureElement,
  lettering: Lettering,
): void {
  const title = wellFormed(page.title);
  const size = [pointsFromMm(page.widthMm), pointsFromMm(page.heightMm)] as const;
  document.addPage({ size, margin: 0 });
  const parts = partTitles(page.nodes);
  const isParted = parts.length > 0;
  for (const part of isParted ? parts : [title]) document.outline.addItem(part, { fit: true });
  document.addContent(UNIT);
  const section = document.struct('Sect', isParted ? {} : { title });
  root.add(section);
  const writing: Writing = { document, lettering, pen: new Map(), artifacts: [] };
  for (const node of page.nodes)
    writeNode(node, { transform: IDENTITY, clips: [] }, section, writing);
  writeArtifacts(writing);
  section.end();
}

/** The titles of parts of a page that stand for themselves, in order. */
function partTitles(nodes: readonly SceneNode[]): readonly string[] {
  return nodes.flatMap((node) => {
    if (node.kind !== 'group') return [];
    return node.title === undefined ? partTitles(node.children) : [wellFormed(node.title)];
  });
}

/** From the library's points, y already down, to millimetres. */
const UNIT = `${pointsFromMm(1).toFixed(7)} 0 0 ${pointsFromMm(1).toFixed(7)} 0 0 cm`;

function writeNode(
  node: SceneNode,
  place: Place,
  parent: StructureElement,
  writing: Writing,
): void {
  if (node.kind === 'shape') writing.artifacts.push({ node, ...place });
  else if (node.kind === 'text') writeElement('P', [{ node, ...place }], parent, writing, {});
  else writeGroup(node, place, parent, writing);
}

/** A group with `alt` is one figure, whatever is in it; others pass on or become elements by their role. */
function writeGroup(group: Group, outer: Place, parent: StructureElement, writing: Writing): void {
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
    const element = writing.document.struct(type, titled);
    parent.add(element);
    for (const child of group.children) writeNode(child, place, element, writing);
    element.end();
  }
}

/** One element with one stretch of content; what is not shown letter by letter is said in its actual text. */
function writeElement(
  type: string,
  leaves: readonly Leaf[],
  parent: StructureElement,
  writing: Writing,
  options: StructureOptions,
): void {
  writeArtifacts(writing);
  const { document, pen, lettering } = writing;
  const texts = leaves.flatMap(({ node }) => (node.kind === 'text' ? [node] : []));
  const actual = texts.some(needsWords) ? texts.map(({ text }) => text).join(' ') : undefined;
  const element = document.struct(type, {
    ...options,
    ...(actual === undefined ? {} : { actual: wellFormed(actual) }),
  });
  parent.add(element);
  const content = document.markStructureContent(type);
  const lastText = leaves.map(({ node }) => node.kind).lastIndexOf('text');
  const lines = leaves.map((leaf, index) => ({ ...leaf, isFollowed: index < lastText }));
  document.addContent(contentOf(lines, pen, lettering));
  document.endMarkedContent();
  element.add(content);
  element.end();
}

/** Whether letters are missing in the font, or stand as one glyph or in another order than they are read. */
function needsWords(text: Text): boolean {
  if (!isSetPlainly(text.text, text.direction)) return true;
  return lettersOf(text).some(({ known }) => !known);
}

function writeArtifacts(writing: Writing): void {
  const { document, pen, lettering, artifacts } = writing;
  if (artifacts.length === 0) return;
  document.markContent('Artifact');
  document.addContent(contentOf(artifacts, pen, lettering));
  document.endMarkedContent();
  writing.artifacts = [];
}

function leavesOf(node: SceneNode, place: Place): Leaf[] {
  if (node.kind !== 'group') return [{ node, ...place }];
  const inner = placeIn(node, place);
  return node.children.flatMap((child) => leavesOf(child, inner));
}

function placeIn({ transform, clip }: Group, outer: Place): Place {
  const inner = transform ? compose(outer.transform, transform) : outer.transform;
  return { transform: inner, clips: clip ? [...outer.clips, clipOf(clip, inner)] : outer.clips };
}

function clipOf(clip: Path, transform: Transform): string {
  return pdfPath(clip, transform);
}
