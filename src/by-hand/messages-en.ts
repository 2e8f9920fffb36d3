// English messages of guides and half-made sheets. {pen} is a colour of the palette, or own: as many colours as a picture
// has; {colour} is its name. All lengths are whole mm.

export const MESSAGES = {
  title: 'Make it by hand: {activity}, step {step}',
  'title.guides':
    'Samewise: {sheets, plural, one {{sheets} sheet} other {{sheets} sheets}} to make by hand',
  'title.halfMade':
    'Samewise: {sheets, plural, one {{sheets} half-made sheet} other {{sheets} half-made sheets}}',
  continued: 'Make it by hand, continued',
  takes: 'About {minutes, plural, one {{minutes} minute} other {{minutes} minutes}}.',
  layOut: 'Lay out',
  'paper.upright': 'one blank sheet of {name} paper, upright',
  'paper.lying': 'one blank sheet of {name} paper, lying',
  ruler: 'a ruler and a pencil',
  'pen.coloured': 'coloured',
  'pens.one': '{pen, select, own {a coloured pen or more} other {a {colour} pen}}',
  'pens.many': 'pens: {pens}',
  'pens.each': '{pen, select, own {colours for the pictures} other {{colour}}}',
  stickers:
    '{count, plural, one {{count} {colour} sticker} other {{count} {colour} stickers}}, {diameterMm}\u00a0mm',
  // What the child needs besides: {things} is a list of the next ones.
  child: 'For the child, besides: {things}.',
  'child.stickers':
    '{count, plural, one {{count} {colour} sticker} other {{count} {colour} stickers}} of {diameterMm}\u00a0mm',
  'child.crayons': '{count, plural, one {a {colours} crayon} other {crayons in {colours}}}',
  'child.pencil': 'a pencil',
  'child.scissors': 'scissors with round ends',
  'child.glue': 'a glue stick',
  'child.counters': 'small counters in the colours of the sheet',
  'child.pockets': 'a wipe-clean pocket',
  howItLooks: 'How it will look',
  howToRead:
    'The numbers are those of the list. “40 across, 150 down” is 40 mm from the left edge of the page and 150 mm from its top edge: there the middle of the thing goes, or the upper left corner of a box.',
  'copied.curves': 'This sheet has curves or outlines that no one draws freely. {how}',
  'copied.overlapping': 'On this sheet things lie over one another. {how}',
  'copied.crowded': 'This sheet holds more than can be placed with a ruler. {how}',
  'copied.how':
    'Copy the last page square by square in the colours that it shows, or trace it from a screen that shows it at true size under the paper. Then go through the list.',
  'copied.some':
    '{count, plural, =1 {One picture or pattern is} other {{count} pictures or patterns are}} too rich to draw from words: copy them square by square from the last page, or trace them from a screen that shows it at true size under the paper.',
  fold: 'Fold',
  // {ways} is one of the next six, or two of them.
  'fold.how': 'Fold the page {ways}. Open it again: each part is a box.',
  'fold.then': '{before}, then {next}',
  'fold.down.2': 'in half, the creases from side to side (bottom edge up to the top edge)',
  'fold.down.3': 'in three, the creases from side to side (all parts alike)',
  'fold.down.4': 'in four, the creases from side to side (bottom edge up to the top edge)',
  'fold.across.2': 'in half, the creases from top to bottom (right edge over to the left edge)',
  'fold.across.3': 'in three, the creases from top to bottom (all parts alike)',
  'fold.across.4': 'in four, the creases from top to bottom (right edge over to the left edge)',
  rule: 'Rule with a black pen',
  box: 'box {number}: {left}\u00a0across, {top}\u00a0down, {width}\u00a0wide, {height}\u00a0high',
  'box.dashed':
    'dashed box {number}: {left}\u00a0across, {top}\u00a0down, {width}\u00a0wide, {height}\u00a0high',
  line: 'line: from {fromX}\u00a0across, {fromY}\u00a0down, to {toX}\u00a0across, {toY}\u00a0down',
  'line.dashed':
    'dashed line: from {fromX}\u00a0across, {fromY}\u00a0down, to {toX}\u00a0across, {toY}\u00a0down',
  // The headings of all stickers of one colour and size, and of all that is drawn with one pen.
  'heading.stickers': 'Stick on {count} {colour}, {diameterMm}\u00a0mm',
  'heading.pen':
    '{pen, select, own {Draw {count} in colours} other {Draw {count} with the {colour} pen}}',
  place: '{x}\u00a0across, {y}\u00a0down',
  'place.box': '{x}\u00a0across, {y}\u00a0down (box {box})',
  'place.part': '{x}\u00a0across, {y}\u00a0down (part {box})',
  'place.inside': 'inside number {inside}, as the picture shows',
  'place.patch': 'its upper left corner {left} across, {top} down',
  'size.across': '{across}\u00a0mm',
  'size.both': '{width}\u00a0mm wide, {height}\u00a0mm high',
  drawn: '{name}, {size}: {place}',
  'drawn.copied': '{name}, {size}, copied: {place}',
  'copy.sticker': 'sticker, {size}',
  'copy.thing': '{name}, {size}',
  code: 'Write {code} small at the foot of the page: with it the sheet is recorded and made again.',
  last: 'At the end',
  stickFirst: 'Stick these on first',
  'stickFirst.how':
    'Each empty circle on a sheet says its colour. One sheet of stickers after the other is quickest.',
  'stickFirst.none': 'Nothing to stick on: the sheet is printed whole.',
  sheet: 'Sheet {number} · {code}',
  answers: 'Answers',
  grid: 'To copy square by square',
  'grid.advice':
    'Each square is 5\u00a0mm, each strong line 50\u00a0mm from the next. Printed or shown at true size, it can be traced.',
  // What things are called that have no other name.
  'name.sticker': 'empty circle for a {colour} sticker',
  'name.ring': 'empty circle',
  'name.ring.dashed': 'dashed circle',
  'name.dot': 'small dot',
  'name.patch': '{colour} patch',
  'name.written': 'the word “{words}”',
} as const;
