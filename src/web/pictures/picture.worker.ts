// The worker that simplifies pictures, and tells which others they are too alike to.
import { areLookAlikes, formName, ownFormOf, ownPictureId, PICTURES } from '../../figures/index.ts';
import { answerAll } from '../asking/answer-all.ts';
import type { Question } from '../asking/talk.ts';
import { languageNow } from '../speaking/language-now.ts';
import { toldPictures } from './know-told.ts';
import type { PictureTalk, SimplifyReply } from './protocol.ts';
import { simplified } from './simplify.ts';

answerAll<PictureTalk>(answer);

function answer({ pixels, wishes }: Question<PictureTalk>): SimplifyReply {
  const made = simplified(pixels, wishes);
  if ('fault' in made) return { ok: false, fault: made.fault };
  const id = ownPictureId(made.picture);
  const own = ownFormOf(id);
  const others = toldPictures().map((picture) => ownFormOf(ownPictureId(picture)));
  const alike = [...others, ...PICTURES]
    .filter((form) => form !== own && areLookAlikes(own, form))
    .map((form) => formName(form, languageNow()));
  return { ok: true, value: { ...made, id, alike } };
}
