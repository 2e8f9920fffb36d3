// English messages of scanning a sheet code.

export const MESSAGES = {
  camera: 'Scan with the camera',
  photo: 'From a photo',
  privacy: 'Pictures never leave this device and are not kept.',
  close: 'Close',
  picture: 'What the camera sees',
  starting: 'Starting the camera …',
  hold: 'Hold the small square code from the foot of the sheet in view, a hand’s length away.',
  // Also said of a code from a newer planner, which may well be on a sheet.
  otherInView:
    'That is another code: no sheet can be made again from it here. The camera goes on looking.',
  'noCamera.not-secure':
    'This address is not secure, so the browser lends it no camera. Type the code, or choose a photo of the sheet.',
  'noCamera.none': 'No camera was found here. Type the code, or choose a photo of the sheet.',
  'noCamera.refused':
    'The camera was refused. The browser’s settings for this page can allow it. Type the code, or choose a photo of the sheet.',
  'noCamera.stopped':
    'The camera did not start or has stopped; another program may be using it. Type the code, or choose a photo of the sheet.',
  outOfSight: 'The camera was let go of when this page went out of sight.',
  readByCamera: 'The camera has read the code.',
  readingPhoto: 'Reading the photo …',
  readFromPhoto: 'The code was read from the photo.',
  otherInPhoto:
    'That is another code: no sheet can be made again from it here. Choose a photo of the code at the foot of a sheet.',
  nothingInPhoto:
    'No code was found in the photo. Take one nearer to the foot of the sheet, in good light, or type the code.',
  noPicture:
    'The browser cannot read this file as a picture. Choose another photo, or type the code.',
  readerBroken:
    'What reads codes from pictures did not start in this browser. Please type the code.',
} as const;
