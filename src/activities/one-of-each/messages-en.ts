// English messages of one-of-each.

export const MESSAGES = {
  name: 'one of each',
  about: 'Looks along rows and columns to find what each of them still lacks.',
  'steps.1': 'two rows of two colours, and one cell is empty',
  'steps.2': 'one empty cell becomes two',
  'steps.3': 'two rows and colours become three',
  'steps.4': 'two empty cells become three',
  'steps.5': 'three empty cells become four',
  'steps.6': 'some cells can be told only when others are filled',
  'steps.7': 'three rows and colours become four',
  'steps.8': 'four empty cells become six',
  'steps.9': 'row and column must be looked at together',
  'steps.10': 'six empty cells become eight',
  'steps.11': 'eight empty cells become ten',
  'steps.12': 'each block has one of each, too',
  'steps.13': 'ten empty cells become twelve',
  'set.content.label': 'Fill with',
  'set.content.help':
    'What the grid is filled with. Of shapes in colours, no two share their shape or their colour.',
  'set.response.label': 'The child',
  'set.response.help':
    'What the child does with each empty cell. Stickers, counters and colouring in go with colours only. Counters are small parts and not for children under three.',
  'set.response.point': 'points to what is missing',
  'set.response.sticker': 'puts a sticker',
  'set.response.counters': 'lays a counter',
  'set.response.colour-in': 'colours in',
  'set.response.draw': 'draws or writes it',
  'set.response.cut': 'cuts pieces out and sticks them in',
  'set.order.label': 'Rows and columns',
  'set.order.help': 'How many rows, columns and different figures there are.',
  'set.empty.label': 'Empty cells',
  'set.empty.help': 'How many cells are to be filled.',
  'set.logic.label': 'Thought needed',
  'set.logic.help': 'The hardest thought that the grid asks for. It never has to be guessed.',
  'set.logic.one-gap': 'only one is missing in a row or column',
  'set.logic.row-and-column': 'look along the row and down the column together',
  'set.logic.elsewhere': 'find the only cell of a row or column that can take a figure',
  'set.chain.label': 'One after the other',
  'set.chain.help':
    'Some cells can be told only when others have been filled. If not, all can be told at once, in any order.',
  'set.boxes.label': 'Blocks',
  'set.boxes.help':
    'With four rows and columns, each of the four blocks within thick lines has one of each, too.',
  'set.stickerMm.label': 'Sticker size',
  'set.stickerMm.help':
    'How wide the dots are where stickers are used. Choose the size of your stickers.',
} as const;
