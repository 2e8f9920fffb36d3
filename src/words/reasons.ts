// What a refusal says of its own, in any language.
import { faultIn, sayTold } from '../activities/index.ts';
import type { Reason } from '../base/index.ts';
import { inEachLanguage, type Language, sayIn } from '../languages/index.ts';
import { MESSAGES } from './messages-reasons-en.ts';

const SAYS = inEachLanguage((language) => sayIn(language, 'reasons', MESSAGES));

export function reasonIn(language: Language, reason: Reason): string {
  if (typeof reason === 'string') return reason;
  return reason.space === 'reasons'
    ? sayTold(language, reason, SAYS[language])
    : faultIn(language, reason);
}

/** So much of a thing, such as `2 tasks on A4 portrait`. */
export function amountIn(language: Language, count: number, unit: Reason): string {
  if (typeof unit === 'string') return `${count} ${unit}`;
  return reasonIn(language, { ...unit, values: { ...unit.values, count } });
}
