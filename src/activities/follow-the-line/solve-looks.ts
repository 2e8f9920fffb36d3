// Whether a child would bring an end together with a start by their looks, without any line.
import {
  areLookAlikes,
  characterOf,
  type Figure,
  type FormId,
  formOf,
  isLetter,
  isNumeral,
  isPicture,
  isShape,
  isSign,
} from '../../figures/index.ts';

/** Looks that a child has one plain word for, such as round, as shapes and signs and as characters. */
const LOOKS: readonly { readonly forms: readonly FormId[]; readonly characters: string }[] = [
  {
    forms: ['circle', 'oval', 'sign-ring', 'sign-dot', 'picture-ball', 'picture-clock'],
    characters: 'OoQ0ОоΟοΘθσ',
  },
  {
    forms: ['cross', 'sign-plus', 'sign-oblique-cross'],
    characters: 'XxTtХхТтΧχΤτ',
  },
  { forms: ['triangle', 'sign-triangle'], characters: 'AVvАΔΛλДд' },
  { forms: ['square', 'oblong', 'sign-square'], characters: 'ПпΠπ' },
  { forms: ['crescent', 'half-circle', 'picture-banana'], characters: 'CcDСс' },
  { forms: ['leaf', 'picture-maple-leaf'], characters: '' },
];

/** In colour, in form, or in one of the plain looks. */
export function goTogether(start: Figure, end: Figure): boolean {
  const [one, other] = [formOf(start), formOf(end)];
  const isOneColour = start.colour !== undefined && start.colour === end.colour;
  const isOneLook = LOOKS.some((look) => isOf(look, one) && isOf(look, other));
  return isOneColour || isOneLook || (kindOf(one) === kindOf(other) && areLookAlikes(one, other));
}

function isOf({ forms, characters }: (typeof LOOKS)[number], form: FormId): boolean {
  const isCharacter = isLetter(form) || isNumeral(form);
  return isCharacter ? characters.includes(characterOf(form)) : forms.includes(form);
}

function kindOf(form: FormId): string {
  if (isShape(form)) return 'shape';
  if (isSign(form)) return 'sign';
  if (isPicture(form)) return 'picture';
  return form === 'dots' ? 'dots' : 'character';
}
