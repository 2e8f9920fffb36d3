// English messages of shadows.

export const MESSAGES = {
  name: 'shadows',
  about: 'Looks at the outline alone and finds the shadow that a figure would throw.',
  'steps.1': 'one picture has its shadow among three that are very unlike',
  'steps.2': 'three shadows become four',
  'steps.3': 'pointing becomes drawing a line',
  'steps.4': 'two pictures look for their shadows',
  'steps.5': 'four shadows become five',
  'steps.6': 'two pictures become three',
  'steps.7': 'the shadows are smaller than the pictures',
  'steps.8': 'the outlines come nearer to each other',
  'steps.9': 'three pictures become four',
  'steps.10': 'five shadows become six',
  'steps.11': 'the outlines come still nearer to each other',
  'steps.12': 'four pictures become five',
  'steps.13': 'the shadows are of several sizes',
  'set.content.label': 'Look at',
  'set.content.help':
    'Whose shadows they are. Only what differs in outline has a shadow of its own.',
  'set.response.label': 'The child',
  'set.response.help':
    'What the child does with the right shadow. Several figures can only be joined to theirs.',
  'set.response.point': 'points to the shadow',
  'set.response.ring': 'draws a ring round the shadow',
  'set.response.join': 'draws a line to the shadow',
  'set.models.label': 'Figures',
  'set.models.help': 'How many figures look for their shadow.',
  'set.shadows.label': 'Shadows',
  'set.shadows.help':
    'How many shadows there are. Where they are more than the figures, some belong to none.',
  'set.likeness.label': 'How like they are',
  'set.likeness.help':
    'Whether the outlines are far from each other or near, always far enough to be told apart. Directions are always as they are.',
  'set.likeness.far': 'far apart',
  'set.likeness.middle': 'in between',
  'set.likeness.near': 'near each other',
  'set.resize.label': 'Size of the shadows',
  'set.resize.help':
    'How large the shadows are beside their figures. The outline tells, never the size.',
  'set.resize.same': 'as large',
  'set.resize.smaller': 'smaller',
  'set.resize.bigger': 'bigger',
  'set.resize.mixed': 'of several sizes',
  'set.mirrors.label': 'Mirror images',
  'set.mirrors.help':
    'Whether one of the wrong shadows is the mirror image of the figure. Very hard: side by side, children of four to six do no better than by guessing. Only with directions.',
  'set.mirrors.none': 'none',
  'set.mirrors.left-right': 'pointing left and right',
  'set.mirrors.slanted': 'slanted both ways',
} as const;
