// The heading under which Make folds the family's own pictures away; what is under it is fetched when wanted.
import { spoken } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';

export const foldWords = spoken('app/pictures', MESSAGES, ({ plain }) => plain);
