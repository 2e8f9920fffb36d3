// The worker behind the screens about children: answers each question with the core.
import { answerAll } from '../asking/answer-all.ts';
import { answer } from './answer.ts';
import type { PlanTalk } from './protocol.ts';

answerAll<PlanTalk>(answer);
