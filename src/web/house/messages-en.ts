// English messages of what sheets take of the house; {key} tells the colour, whatever its name.

export const MESSAGES = {
  title: 'From what is in the house',
  ofCount: 'How many, of how many there are in the house.',
  nothing: 'It takes nothing: the child points.',
  tooMany: 'With more than {most} sheets this is not counted here.',
  'thing.sticker': '{colour} stickers, {diameterMm, number}\u00a0mm:',
  'thing.crayon': 'a crayon in {colour}:',
  'thing.pencil': 'a pencil:',
  'thing.scissors': 'scissors:',
  'thing.glue': 'a glue stick:',
  'thing.counters': 'small counters:',
  'thing.pockets': 'wipe-clean pockets:',
  'thing.paper': '{paper, select, Letter {US Letter} other {{paper}}} paper:',
  'count.sticker': '{uses} of {has}',
  'count.there': 'there',
  'missing.sticker': ', {missing} missing',
  'missing.other': 'missing',
} as const;
