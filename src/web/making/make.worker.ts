// The worker behind the screen on which sheets are made: answers each question with the core.
import { answerAll } from '../asking/answer-all.ts';
import { answer } from './answer.ts';
import type { MakerTalk } from './protocol.ts';

answerAll<MakerTalk>(answer);
