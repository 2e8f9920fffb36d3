// Any string becomes text that a strict reader takes.
import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { escapeXml, wellFormed } from './xml-text.ts';

const seed = testSeed('xml-text');

test('marks of XML are escaped, so that no text can become a tag or end an attribute', () => {
  expect(escapeXml(`<script>"a" & 'b'</script>`)).toBe(
    '&lt;script&gt;&quot;a&quot; &amp; &#39;b&#39;&lt;/script&gt;',
  );
});

test('controls, halves of surrogate pairs and non-characters become U+FFFD; line ends become spaces', () => {
  expect(wellFormed('a\u0000b\u0007c\u001bd\u0085e')).toBe('a\uFFFDb\uFFFDc\uFFFDd\uFFFDe');
  expect(wellFormed('x\uD800y\uDC00z\uFFFE')).toBe('x\uFFFDy\uFFFDz\uFFFD');
  expect(wellFormed('one\r\n\ttwo')).toBe('one two');
});

test('what is sound stays: accents, other scripts, whole pairs', () => {
  const sound = 'café · שלום · مرحبا · 🙂 · “quoted”';
  expect(wellFormed(sound)).toBe(sound);
});

test('a strict XML reader accepts any string, between tags and in an attribute', () => {
  // Halves of pairs and controls included.
  const unit = fc.integer({ min: 0, max: 0xffff }).map((code) => String.fromCharCode(code));
  const strings = fc.sample(fc.string({ unit }), { seed, numRuns: 500 });
  const groups = strings.map((words) => {
    const text = escapeXml(words);
    return `<g aria-label="${text}"><title>${text}</title></g>`;
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1">${groups.join('')}</svg>`;
  expect(() => new Resvg(svg, { font: { loadSystemFonts: false } })).not.toThrow();
});
