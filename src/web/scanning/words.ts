// What scanning a sheet code says; fetched with it.
import type { WhyNoCamera } from './use-camera.ts';

const OTHERWISE = 'Type the code, or choose a photo of the sheet.';

/** Also said of a code from a newer planner, which may well be on a sheet. */
const ANOTHER = 'That is another code: no sheet can be made again from it here.';

const NO_CAMERA: Readonly<Record<WhyNoCamera, string>> = {
  'not-secure': `This address is not secure, so the browser lends it no camera. ${OTHERWISE}`,
  none: `No camera was found here. ${OTHERWISE}`,
  refused: `The camera was refused. The browser’s settings for this page can allow it. ${OTHERWISE}`,
  stopped: `The camera did not start or has stopped; another program may be using it. ${OTHERWISE}`,
};

export const words = {
  camera: 'Scan with the camera',
  photo: 'From a photo',
  privacy: 'Pictures never leave this device and are not kept.',
  close: 'Close',
  picture: 'What the camera sees',
  starting: 'Starting the camera …',
  hold: 'Hold the small square code from the foot of the sheet in view, a hand’s length away.',
  otherInView: `${ANOTHER} The camera goes on looking.`,
  noCamera: NO_CAMERA,
  outOfSight: 'The camera was let go of when this page went out of sight.',
  readByCamera: 'The camera has read the code.',
  readingPhoto: 'Reading the photo …',
  readFromPhoto: 'The code was read from the photo.',
  otherInPhoto: `${ANOTHER} Choose a photo of the code at the foot of a sheet.`,
  nothingInPhoto:
    'No code was found in the photo. Take one nearer to the foot of the sheet, in good light, or type the code.',
  noPicture:
    'The browser cannot read this file as a picture. Choose another photo, or type the code.',
  readerBroken:
    'What reads codes from pictures did not start in this browser. Please type the code.',
} as const;
