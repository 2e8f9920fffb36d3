// What is said of the family's own pictures.
import { MOST_OWN_ON_SHEET } from '../../figures/index.ts';
import { spoken } from '../speaking/spoken.ts';
import { MOST_PIXELS } from './image-header.ts';
import { MESSAGES } from './messages-en.ts';
import type { OpenFault } from './open-image.ts';

export type Fault = OpenFault | 'one-colour' | 'too-fine' | 'no-worker';

export const words = spoken('app/pictures', MESSAGES, ({ say, plain, under }) => ({
  ...plain,
  useOn: (name: string) => say('useOn', { name }),
  most: say('most', { most: MOST_OWN_ON_SHEET }),
  removeOne: (name: string) => say('removeOne', { name }),
  removed: (name: string) => say('removed', { name }),
  broughtBack: (name: string) => say('broughtBack', { name }),
  keptNow: (name: string) => say('keptNow', { name }),
  move: under('move'),
  shapes: under('shapes'),
  grounds: under('grounds'),
  fault: (fault: Fault) => say(`fault.${fault}`, { most: MOST_PIXELS / 1_000_000 }),
  alike: (names: readonly string[]) => {
    const [first = '', ...others] = names;
    const all = others.reduce((before, next) => say('listNext', { before, next }), first);
    return say('alike', { names: all });
  },
}));
