// English messages of the family's own pictures.

export const MESSAGES = {
  title: 'Own pictures',
  about:
    'A photo or a child’s drawing becomes a picture of few flat colours that prints well. It is kept on this device alone and goes into your backups; nothing leaves the device.',
  notHere:
    'The pictures of this activity are chosen so that one answer is certain; your own do not stand on its sheets.',
  looking: 'Looking for kept pictures …',
  none: 'No picture is kept yet.',
  kept: 'Kept pictures',
  nameOf: 'Name',
  unnamed: 'own picture',
  nameHelp: 'A short word, said in the tasks. It may stay empty.',
  onSheet: 'On the sheets',
  useOn: 'On the sheets: {name}',
  most: 'A sheet can have {most} own pictures.',
  alone: 'Only these, without the other pictures',
  aloneHelp:
    'A task needs several that differ enough in outline; where they are too few, the sentence above says so.',
  remove: 'Remove',
  removeOne: 'Remove {name}',
  removed: '{name} is removed from this device. Backups that were made before still hold it.',
  undo: 'Undo',
  broughtBack: '{name} is back.',
  renamed: 'The name is kept.',
  add: 'Take a photo or choose a picture',
  drop: 'You can also drop a picture here, or paste one.',
  dropHere: 'Place for a picture',
  opening: 'Opening the picture …',
  'fault.empty': 'That file is empty. Choose another one.',
  'fault.drawing':
    'That is an SVG drawing, which may hold more than a picture, so it is not opened. Save it as PNG or JPEG, or photograph it.',
  'fault.unknown':
    'That is no picture that is known here. PNG, JPEG, WebP, GIF and BMP are; most browsers also open AVIF.',
  'fault.too-large':
    'That picture has more than {most} million pixels, too many to open safely. Make a smaller copy, or photograph with fewer pixels.',
  'fault.heic':
    'This browser cannot open HEIC photos. In the camera’s settings choose “most compatible”, or send the photo to yourself as JPEG.',
  'fault.broken': 'That picture is broken and cannot be opened. Choose another one.',
  'fault.one-colour':
    'Nothing stands out there: it is all of one colour. Move to another part of the picture, or choose another one.',
  'fault.too-fine':
    'There is too much fine detail to print well. Take fewer colours, or make the thing itself bigger.',
  'fault.no-worker': 'The picture could not be simplified. Reload the page and try again.',
  crop: 'Choose what to take',
  stage: 'What is taken of the picture. Drag it, or use the arrow keys, plus and minus.',
  'move.left': 'Left',
  'move.right': 'Right',
  'move.up': 'Up',
  'move.down': 'Down',
  bigger: 'Bigger',
  smaller: 'Smaller',
  shape: 'Cut out as',
  'shapes.circle': 'a circle',
  'shapes.square': 'a square',
  colours: 'Colours',
  ground: 'What is round it',
  'grounds.away': 'take away',
  'grounds.stay': 'leave',
  groundHelp: 'Pictures are told apart by their outline, so that it helps to take the ground away.',
  printed: 'As it is printed',
  printedAlt: 'The picture as it is printed',
  groundStays: 'The ground could not be taken away: hardly anything would be left.',
  alike:
    'In outline it is much like {names}; they never stand together where they must be told apart.',
  listNext: '{before}, {next}',
  already: 'This very picture is kept already.',
  keep: 'Keep the picture',
  another: 'Leave it',
  keptNow: '{name} is kept on this device.',
} as const;
