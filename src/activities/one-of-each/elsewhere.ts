// Grids of five rows in which some figure can be placed only because it is elsewhere in all other lines; rare.

/**
 * By the number of empty cells: row by row 0 to 4 for a figure that is given, a to e for the same where the cell is
 * empty. Found by emptying cells of random squares: of those that are emptied as far as they can be, about one
 * in twenty needs such a thought, so that they are kept here and changed about by rows, columns and figures.
 */
export const ELSEWHERE: Readonly<Record<number, readonly string[]>> = {
  13: [
    '4c3b0a3241b0ecd2b0dedeb02',
    'ce031e12adda1e20cd1e1de20',
    '04321dbea2e201dbac3e23bea',
    'abc43b2da43eac1ea1dc23410',
    '2d0be0bd4ce210dd0e21bec30',
    '0bced401dc340cbbcd04c34b0',
  ],
  14: [
    'a142342db0dac4bbe0dc2db0e',
    'd4cab21ae3b3e200cb3ee03bc',
    'cd40bbcd4a340bc01cd4e01cd',
    'e13c032aebcae1dae132b32ae',
    'adce1e13c01a4dcc401ddc10e',
    '10c4dd410cc3eb0e2adb0bdc4',
  ],
  15: [
    'be0dc3ace1ec103c3e10abdc4',
    'e3c0bcb0de3c1eaae3121aec3',
    'aedbc4bac3b3c4a3c1a42ae31',
    '1d40cca1ed4cad1d42baab3c4',
    'ce1dabd40ce0dc1320be0bc4d',
    '1e20ddca41a14dc2adbe4dbc0',
  ],
  16: [
    '04c1dedb0c2bed03c0ebba3ce',
    'ecb03a4dbc3bec02d0e1ba2de',
    'dcb0e4bad22a3ebbde2004cbd',
    'decbacb034ba34c4cb0da3e2b',
    '1a4dcacb43de2abc3ab44bd2a',
    'bcade2b3e00ec1dd0ec1e3b0c',
  ],
  17: [
    'ce13abdace4b3aca2e1dd0ce1',
    '3acbe431ac0cd4bb4acdcbed0',
    'd4bcac3abe1a4dc0bce34cd0b',
    'edb0cae23b1cdeac0eb3d10ce',
    'de1cae0cbda2e3b1dae2cb3a4',
    'bc4da2adbe0bc4d3eba2e3a2b',
  ],
};
