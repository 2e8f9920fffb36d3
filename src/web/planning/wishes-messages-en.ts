// English messages of the wishes for plans.

export const MESSAGES = {
  wishes: 'Wishes for plans',
  minutes: 'How long a day',
  minutesHelp: 'About so many minutes, in two to four sheets.',
  minuteName: '{minutes, plural, one {{minutes} minute} other {{minutes} minutes}}',
  paper: 'Paper',
  'papers.A4': 'A4',
  'papers.Letter': 'US Letter',
  print: 'Printed in',
  printHelp: 'In grey each colour also carries a letter.',
  'prints.colour': 'colour',
  'prints.grey': 'grey',
  things: 'In the house',
  thingsHelp: 'A sheet that needs anything else is not planned.',
  'thingNames.sticker': 'stickers',
  'thingNames.crayon': 'crayons',
  'thingNames.pencil': 'a pencil',
  'thingNames.scissors': 'scissors with round ends',
  'thingNames.glue': 'a glue stick',
  // {supplies} is a link with the name of that screen.
  counted:
    'What is in the house was counted: plans keep to its colours, sizes, tools and printer. Change it in {supplies}.',
} as const;
