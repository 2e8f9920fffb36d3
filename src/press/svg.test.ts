// The SVG of a page: true size, standing alone, readable, and whole whatever the text says.
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { circlePath, compose, moveBy, scaleBy } from '../base/index.ts';
import { filled, group, line, marked, type Page, type SceneNode, text } from '../page/index.ts';
import { svgOf } from './index.ts';

function pageOf(...nodes: readonly SceneNode[]): Page {
  return { widthMm: 210, heightMm: 297, title: 'A sheet', nodes };
}

const dot = filled(circlePath(10, 10, 5), '#ff0000');

const HOSTILE = [
  '<script>alert(1)</script>',
  `"'><image href="http://example.com/x"/>`,
  '&lt;b&gt; &#0; ]]>',
  'bell\u0007 null\u0000 escape\u001b',
  'half a pair \uD83D and \uDC00',
  'გამარჯობა สวัสดี',
  '🙂👩‍👧',
  'line\nfeed\tand tab',
];

test('width, height and view box are the page in millimetres', () => {
  expect(svgOf(pageOf())).toMatch(/^<svg [^>]*width="210mm" height="297mm" viewBox="0 0 210 297"/);
});

test('the same page gives the same text', () => {
  const page = pageOf(dot, text('box', 20, 20, 5));
  expect(svgOf(page)).toBe(svgOf(structuredClone(page)));
});

describe('for readers', () => {
  test('the page has a title, a picture its alternative text, and a line of text its words', () => {
    const svg = svgOf(pageOf(group('task', [dot], 'three boxes'), text('Name', 20, 20, 5)));
    expect(svg).toContain('<title>A sheet</title>');
    expect(svg).toContain('<g data-role="task" role="img" aria-label="three boxes">');
    expect(svg).toMatch(/<path role="img" aria-label="Name"/);
  });

  test('a picture that holds pictures is a group, so that both can be heard', () => {
    const svg = svgOf(pageOf(group('task', [group('figure', [dot], 'red circle')], 'one box')));
    expect(svg).toContain('<g data-role="task" role="group" aria-label="one box">');
    expect(svg).toContain('<g data-role="figure" role="img" aria-label="red circle">');
  });
});

describe('for the app', () => {
  test('a mark is written on its group alone, the mark 0 too', () => {
    const choices = [0, 7].map((mark) => marked(group('choice', [dot]), mark));
    const svg = svgOf(pageOf(group('task', [...choices, group('choice', [dot])])));
    expect(svg.match(/<g [^>]*>/g)).toEqual([
      '<g data-role="task">',
      '<g data-role="choice" data-mark="0">',
      '<g data-role="choice" data-mark="7">',
      '<g data-role="choice">',
    ]);
  });
});

describe('standing alone', () => {
  const clipped: SceneNode = { kind: 'group', clip: circlePath(10, 10, 4), children: [dot] };

  test('nothing is fetched, run or written in a font', () => {
    const svg = svgOf(pageOf(clipped, text('Name', 20, 20, 5)));
    expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
      /https?:|href|<script|<style|<text|font/,
    );
  });

  test('two pictures in one document share no id when each has its prefix', () => {
    const idsIn = (idPrefix: string) =>
      [...svgOf(pageOf(clipped, clipped), { idPrefix }).matchAll(/ id="([^"]+)"/g)].map(
        ([, id]) => id,
      );
    const ids = [...idsIn('a'), ...idsIn('b')];
    expect(ids).toHaveLength(4);
    expect(new Set(ids).size).toBe(4);
  });

  test('every clip that is named is there', () => {
    const svg = svgOf(pageOf(clipped, clipped), { idPrefix: 'x"&' });
    const named = [...svg.matchAll(/clip-path="url\(#([^)]+)\)"/g)].map(([, id]) => id);
    const there = [...svg.matchAll(/<clipPath id="([^"]+)"/g)].map(([, id]) => id);
    expect(named).toEqual(there);
    expect(() => new Resvg(svg, { font: { loadSystemFonts: false } })).not.toThrow();
  });
});

test.each(HOSTILE)('the text %j breaks nothing, as words, title, alternative or role', (words) => {
  const page: Page = {
    ...pageOf(group(words, [dot], words), text(words, 20, 20, 5)),
    title: words,
  };
  const svg = svgOf(page);
  expect(() => new Resvg(svg, { font: { loadSystemFonts: false } })).not.toThrow();
  expect(svg).not.toMatch(/<script|<image/);
});

test('a drawing made smaller has thinner lines and closer dashes', () => {
  const dashed = line(0, 0, 10, 0, { widthMm: 1, dashMm: [2, 1] });
  const half: SceneNode = {
    kind: 'group',
    transform: compose(moveBy(5, 5), scaleBy(0.5)),
    children: [dashed],
  };
  const svg = svgOf(pageOf(half));
  expect(svg).toContain('d="M5 5l5 0"');
  expect(svg).toContain('stroke-width=".5"');
  expect(svg).toContain('stroke-dasharray="1 .5"');
});
