// A page as SVG that stands alone: true size in mm, letters as outlines, no script, no font, no link.
import { compose, IDENTITY, type Transform } from '../base/index.ts';
import type { Group, Page, SceneNode, Shape, Text } from '../page/index.ts';
import { lettersOf, placeOf } from './lettering.ts';
import { mmText } from './numbers.ts';
import { scaleOf, svgPath } from './placing.ts';
import { escapeXml } from './xml-text.ts';

export interface SvgOptions {
  /** Begins the ids of clip paths; give each picture its own where several stand in one document. */
  readonly idPrefix?: string;
}

/** What is the same for everything that is being written into one picture. */
interface Writing {
  readonly nextClipId: () => string;
}

/** The page as one SVG document. */
export function svgOf(page: Page, { idPrefix = 'page' }: SvgOptions = {}): string {
  let clips = 0;
  const writing = { nextClipId: () => `${idPrefix}-clip-${++clips}` };
  const [width, height] = [mmText(page.widthMm), mmText(page.heightMm)];
  const title = escapeXml(page.title);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm"`,
    ` viewBox="0 0 ${width} ${height}" role="group" aria-label="${title}" fill="none"`,
    ' stroke-linecap="round" stroke-linejoin="round">',
    `<title>${title}</title>`,
    `<path d="M0 0H${width}V${height}H0Z" fill="#ffffff"/>`,
    ...page.nodes.map((node) => svgNode(node, IDENTITY, writing)),
    '</svg>\n',
  ].join('');
}

function svgNode(node: SceneNode, transform: Transform, writing: Writing): string {
  if (node.kind === 'shape') return svgShape(node, transform);
  if (node.kind === 'text') return svgText(node, transform);
  return svgGroup(node, transform, writing);
}

function svgGroup(group: Group, outer: Transform, writing: Writing): string {
  const transform = group.transform ? compose(outer, group.transform) : outer;
  const children = group.children.map((child) => svgNode(child, transform, writing)).join('');
  const open = `<g${attributes({
    'data-role': group.role,
    'data-mark': group.mark === undefined ? undefined : String(group.mark),
    'data-place': group.place === undefined ? undefined : String(group.place),
    role: roleOf(group),
    'aria-label': group.title ?? group.alt,
  })}`;
  if (!group.clip) return `${open}>${children}</g>`;
  const id = escapeXml(writing.nextClipId());
  const clip = svgPath(group.clip, transform);
  return `<clipPath id="${id}"><path d="${clip}"/></clipPath>${open} clip-path="url(#${id})">${children}</g>`;
}

function roleOf({ alt, title, children }: Group): 'group' | 'img' | undefined {
  if (alt === undefined) return title === undefined ? undefined : 'group';
  return hasAlt(children) ? 'group' : 'img';
}

/** Whether there are pictures inside a picture, which a reader may then walk through. */
function hasAlt(nodes: readonly SceneNode[]): boolean {
  return nodes.some(
    (node) => node.kind === 'group' && (node.alt !== undefined || hasAlt(node.children)),
  );
}

function svgShape({ path, fill, stroke, rule }: Shape, transform: Transform): string {
  const scale = scaleOf(transform);
  const isSquare = stroke?.ends === 'square';
  // An outline is of letters and digits alone, and long: nothing in it is to be escaped.
  return `<path d="${svgPath(path, transform)}"${attributes({
    fill,
    'fill-rule': fill && rule === 'evenodd' ? rule : undefined,
    stroke: stroke?.colour,
    'stroke-width': stroke && mmText(stroke.widthMm * scale),
    'stroke-dasharray': stroke?.dashMm?.map((mm) => mmText(mm * scale)).join(' '),
    'stroke-linecap': isSquare ? 'butt' : undefined,
    'stroke-linejoin': isSquare ? 'miter' : undefined,
  })}/>`;
}

/** One path for the whole line, so that no two letters can part. */
function svgText(text: Text, transform: Transform): string {
  const d = lettersOf(text)
    .map((letter) => svgPath(letter.outline, compose(transform, placeOf(letter, text))))
    .join('');
  const label = text.text.trim();
  if (d === '') return '';
  return `<path${attributes({ role: 'img', 'aria-label': label, fill: text.colour })} d="${d}"/>`;
}

function attributes(values: Readonly<Record<string, string | undefined>>): string {
  let written = '';
  for (const name in values) {
    const value = values[name];
    if (value !== undefined) written += ` ${name}="${escapeXml(value)}"`;
  }
  return written;
}
