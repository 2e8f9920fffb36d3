// The worker that simplifies pictures, and tells which others they are too alike to.
import {
  areLookAlikes,
  formName,
  type OwnForm,
  ownFormOf,
  ownPictureId,
  PICTURES,
  tryOwnPicture,
} from '../../figures/index.ts';
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
  const alike = tryOwnPicture(made.picture, likeNames);
  return { ok: true, value: { ...made, id: ownPictureId(made.picture), alike } };
}

function likeNames(own: OwnForm): readonly string[] {
  const others = toldPictures().map((picture) => ownFormOf(ownPictureId(picture)));
  return [...others, ...PICTURES]
    .filter((form) => form !== own && areLookAlikes(own, form))
    .map((form) => formName(form, languageNow()));
}
