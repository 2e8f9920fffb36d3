// The foot of a sheet: inside the margins, below the tasks, nothing over anything else.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Placed, placedIn } from '../../tests/scene-bounds.ts';
import { testSeed } from '../../tests/seed.ts';
import {
  drawFoot,
  MODULE_MM,
  ORIENTATIONS,
  PAPER_NAMES,
  pageSize,
  printArea,
  QUIET_MODULES,
  sheetArea,
} from './index.ts';

const seed = testSeed('furniture');
const labels = { name: 'Name', date: 'Date', qr: 'The sheet code as a QR code' };
const CODE_LETTERS = [...'23456789ABCDEFGHJKMNPQRSTUVWXYZ-'];

const feet = fc.record({
  paper: fc.constantFrom(...PAPER_NAMES),
  orientation: fc.constantFrom(...ORIENTATIONS),
  code: fc.string({ unit: fc.constantFrom(...CODE_LETTERS), minLength: 8, maxLength: 40 }),
  question: fc.string({ maxLength: 300 }),
  about: fc.string({ maxLength: 120 }),
  labels: fc.constant(labels),
});

function overlap({ bounds: one }: Placed, { bounds: other }: Placed): boolean {
  return (
    one.left < other.right &&
    other.left < one.right &&
    one.top < other.bottom &&
    other.top < one.bottom
  );
}

test('nothing of the foot leaves the margins, rises into the tasks or lies over something else', () => {
  fc.assert(
    fc.property(feet, (foot) => {
      const print = printArea(foot.paper, foot.orientation);
      const tasks = sheetArea(foot.paper, foot.orientation);
      const placed = placedIn(drawFoot(foot));
      placed.forEach((one, index) => {
        expect(one.bounds.left).toBeGreaterThanOrEqual(print.left - 0.01);
        expect(one.bounds.right).toBeLessThanOrEqual(print.left + print.width + 0.01);
        expect(one.bounds.bottom).toBeLessThanOrEqual(print.top + print.height + 0.01);
        expect(one.bounds.top).toBeGreaterThan(tasks.top + tasks.height + 2);
        for (const other of placed.slice(index + 1)) expect(overlap(one, other)).toBe(false);
      });
    }),
    { seed, numRuns: 40 },
  );
});

test('the quiet zone of the QR code is blank on every side, and its modules can be scanned', () => {
  fc.assert(
    fc.property(feet, (foot) => {
      const { widthMm, heightMm } = pageSize(foot.paper, foot.orientation);
      const placed = placedIn(drawFoot(foot));
      const qr = placed.find(({ roles }) => roles.includes('qr'));
      if (!qr) throw new Error('a foot without a QR code');
      const quiet = QUIET_MODULES * MODULE_MM;
      const zone = {
        ...qr,
        bounds: {
          left: qr.bounds.left - quiet,
          top: qr.bounds.top - quiet,
          right: qr.bounds.right + quiet,
          bottom: qr.bounds.bottom + quiet,
        },
      };
      for (const other of placed) expect(other !== qr && overlap(zone, other)).toBe(false);
      expect(zone.bounds.right).toBeLessThanOrEqual(widthMm);
      expect(zone.bounds.bottom).toBeLessThanOrEqual(heightMm);
    }),
    { seed, numRuns: 40 },
  );
  expect(QUIET_MODULES).toBe(4);
  expect(MODULE_MM).toBeGreaterThanOrEqual(0.4);
});

test('the foot says the question, what the sheet is, name, date and the whole code', () => {
  const said = placedIn(
    drawFoot({
      paper: 'A4',
      orientation: 'portrait',
      code: 'ABCD-2345',
      question: 'Which colours are in every box?',
      about: 'in every box · step 3',
      labels,
    }),
  ).flatMap(({ node }) => (node.kind === 'text' ? [node.text] : []));
  expect(said).toEqual([
    'Which colours are in every box?',
    'in every box · step 3',
    'Name',
    'Date',
    'ABCD-2345',
  ]);
});

test('there is room to write a name by hand: at least 25 mm, and 12 mm for a date', () => {
  fc.assert(
    fc.property(feet, (foot) => {
      const rules = placedIn(drawFoot(foot)).filter(
        ({ node, roles }) => node.kind === 'shape' && !roles.includes('qr'),
      );
      const [name = 0, date = 0] = rules.map(({ bounds }) => bounds.right - bounds.left);
      expect(name).toBeGreaterThanOrEqual(25);
      expect(date).toBeGreaterThanOrEqual(12);
    }),
    { seed, numRuns: 40 },
  );
});
