// Which turns and mirrorings leave the letters of other scripts as they look.
import type { FormId } from './form-names.ts';
import { isOfScript } from './letter-outlines.ts';

/** Letters that look alike upside down. */
const UPSIDE_DOWN = 'ИОФНХЖфиохнжΙΘΝΟΗΦΧΖθοφχا०٠١٥';

/** Letters that are their own mirror image, some but for a hair in print, which no child sees. */
const MIRROR_SAME = 'ЖНПТШАМФОХжптшфмнохΗΙΞΠΤΨΩΥΦΔΟΘΑΧΜΛθφοψωυνχठابةتث०४٠٥٧٨';

/** Letters that their mirror image looks like once it is turned half round. */
const HALF_ROUND = 'ЮЭСЕВКЗюэсвкзΕΒΚΣακε';

/** Whether a letter or numeral of another script looks alike upside down. */
export function isUpsideDownLetter(form: FormId): boolean {
  return isOfScript(form) && UPSIDE_DOWN.includes(characterIn(form));
}

/** The turn in degrees that undoes the mirroring of a letter or numeral of another script; none where no turn does. */
export function letterMirrorTurnDeg(form: FormId): number | undefined {
  if (MIRROR_SAME.includes(characterIn(form))) return 0;
  return HALF_ROUND.includes(characterIn(form)) ? 180 : undefined;
}

function characterIn(form: FormId): string {
  return form.slice(form.indexOf('-') + 1);
}
