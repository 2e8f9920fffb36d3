// What all screens about children say; fetched with the first of them.
import { spoken } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';

export const words = spoken('app/children', MESSAGES, ({ plain }) => plain);
