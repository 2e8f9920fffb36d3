// A worker of `samewise year`: does the units that it is given, one after another, and keeps nothing of them.
import { parentPort, workerData } from 'node:worker_threads';
import { knowOwnPicture } from '../../figures/index.ts';
import { loadAllCatalogues } from '../../languages/index.ts';
import { SHELL_WORDS, sentenceOf } from '../../words/index.ts';
import { Refused } from '../failure.ts';
import { readyFor } from '../language-option.ts';
import { readFonts } from '../package-files.ts';
import type { Answer, Ask, WorkerStart } from './job.ts';
import { lookUp } from './look-unit.ts';
import { plansOf } from './plan-unit.ts';
import { makeWeek } from './week-unit.ts';

const { job, pictures, names } = workerData as WorkerStart;

await loadAllCatalogues();
await readyFor(job.language, names);
for (const picture of pictures) knowOwnPicture(picture, 'records');
const plans = plansOf(job);
const fonts = readFonts();

parentPort?.on('message', async (ask: Ask) => {
  parentPort?.postMessage(await answerTo(ask));
});

async function answerTo(ask: Ask): Promise<Answer> {
  try {
    switch (ask.kind) {
      case 'look':
        return lookUp(job, ask.child);
      case 'measure':
        return plans.measure(ask.activity, ask.children);
      case 'plan':
        plans.know(ask.pages ?? []);
        return await plans.plan(ask.child);
      case 'week':
        return await makeWeek(job, fonts, ask.onSheet, ask.planned);
    }
  } catch (error) {
    return { kind: 'failed', reason: reasonOf(error) };
  }
}

function reasonOf(error: unknown): string {
  if (error instanceof Refused) return error.refusals.map((each) => sentenceOf(each)).join(' ');
  return SHELL_WORDS.defect(error instanceof Error ? error.message : String(error));
}
