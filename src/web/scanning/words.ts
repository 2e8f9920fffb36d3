// What scanning a sheet code says; fetched with it.
import { spoken } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';
import type { WhyNoCamera } from './use-camera.ts';

export const words = spoken('app/scanning', MESSAGES, ({ plain, under }) => ({
  ...plain,
  noCamera: under('noCamera') satisfies Readonly<Record<WhyNoCamera, string>>,
}));
