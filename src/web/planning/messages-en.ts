// English messages of what several screens say of sheets, skills and the things that they take. {skill} is the name of a skill, {skillKey} which.

export const MESSAGES = {
  'skill.telling-apart': 'telling apart',
  'skill.rules': 'keeping a rule',
  'skill.patterns': 'patterns and order',
  'skill.turns': 'turned and mirrored',
  'skill.parts': 'hidden and in parts',
  'skill.memory': 'remembering',
  'skillAbout.telling-apart': 'seeing what is the same and what differs',
  'skillAbout.rules': 'doing with each figure what a rule says',
  'skillAbout.patterns': 'copying a pattern, going on with it, putting in order',
  'skillAbout.turns': 'knowing a shape again when it is turned, and its mirror image',
  'skillAbout.parts': 'finding what lies under lines, is missing, or shows its outline only',
  'skillAbout.memory': 'keeping in mind what was seen',
  'why.first-of-skill': 'The first for “{skill}”, on the easy side, to see where {child} stands.',
  'why.nearest': 'The nearest there is to what {child} can do now.',
  'why.tells-more': 'It tells the most about what {child} can do now.',
  'why.rested':
    '{days, plural, =0 {Last given today, and about as hard as fits now.} =1 {Last given yesterday, and about as hard as fits now.} other {Last given {days} days ago, and about as hard as fits now.}}',
  'why.rested.never': 'New to {child}, and about as hard as fits now.',
  'why.fits': 'About as hard as fits now.',
  'why.favourite': 'An old favourite that goes well, for confidence.',
  'why.favoured': 'You wished for more of “{skill}”.',
  'why.moved-on': 'Planned before, and not done yet.',
  'why.asked': 'As you chose it.',
  // Things in a list. {colour} is the name of a colour, {key} which.
  sticker:
    '{count, plural, one {{count} {colour} sticker} other {{count} {colour} stickers}}, {diameterMm, number}\u00a0mm across',
  crayon: 'a {colour} crayon',
  crayons: 'crayons: {colours}',
  scissorsBeside: 'scissors with round ends, with you beside the child',
  nothing: 'nothing: the child points',
  'tool.pencil': 'a pencil',
  'tool.scissors': 'scissors with round ends',
  'tool.glue': 'a glue stick',
  'tool.counters': 'small counters',
  'tool.pockets': 'wipe-clean pockets',
} as const;
