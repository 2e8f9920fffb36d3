// Letters and numerals that children take for each other although their outlines differ enough.

/**
 * Latin letters and numerals: from the confusions of beginning readers (Popp 1964, The Reading Teacher 17,
 * 221–226, from memory) and common practice.
 */
const LATIN = 'a-o a-q c-e c-o f-t h-n h-u i-j m-n m-w n-r u-v u-y v-w v-y C-G C-O G-O I-l M-W N-Z'
  // Spanish; from memory: the tilde is the only difference, and what n is taken for.
  .concat(' n-ñ h-ñ m-ñ ñ-r ñ-u N-Ñ M-Ñ Z-Ñ')
  .concat(' U-V V-Y 0-O 0-o 1-I 1-l 1-7 2-Z 2-z 5-S 5-s 6-G 6-b 9-g 9-q')
  .split(' ')
  .map((pair) => pair.replace('-', ''));

/**
 * Families of other scripts, of which no two stand together: letters that differ in a mark, a tail or one
 * stroke. Cyrillic small letters stand for their capitals too, which look alike. Common practice, no source.
 */
const CYRILLIC =
  'ао ое ес ос ою оф её ий ин ип лп лд гт гр зэ бв бь ьъы въ шщ шц цщ цч чу хж кж мш эс яр'.split(
    ' ',
  );
const GREEK = 'ΑΛΔ ΟΘΦ ΟΩ ΓΤ ΓΠ ΤΠΙ ΕΣ ΕΞ ΖΞ ΖΣ ΥΨΦ ΥΧ ΧΚ ΗΝ ΗΠ ΜΝ ΒΕ ΒΡ ΡΦ'
  .concat(' αο ασ ορσ οθφ αλδ γτ πτ γνυ ηνμ μυ ζξ εξσ εζ ωο ωψ φψ θβ κχ υχψ ιτ γλ δσ πη')
  .split(' ');
const DEVANAGARI =
  'अआओऔ इई इड उऊ उड एऐ एप घध घछ थय थध भम मग भग मस बव पषण पफ कफ कव डङह डढ टठढ ढदङ खर रस खस नत नम तल जञ जच चब शग झअ यप ऋझ ऋक ऋट ऋञ १९ २३ २९ ४५ ६३ ६९ ७१ ०१ ८५ ७९'.split(
    ' ',
  );
const ARABIC = [
  'بتثني',
  'جحخ',
  'دذ',
  'رز',
  'در',
  'ذز',
  'سش',
  'صض',
  'طظ',
  'عغ',
  'حع',
  'خغ',
  'فقو',
  'رو',
  'زو',
  'كل',
  'لا',
  'لن',
  'هم',
  'اأإآل',
  'ءعأ',
  'ةه',
  'ةت',
  'ىيئن',
  'ؤوفق',
  '٢٣',
  '٣٤',
  '١٩',
  '٦٩',
  '٧٨',
  '٢٦',
];

const PAIRS = new Set(
  [...LATIN, ...CYRILLIC, ...GREEK, ...DEVANAGARI, ...ARABIC].flatMap((family) => {
    const members = [...family];
    return members.flatMap((one) => members.map((other) => `${one}${other}`));
  }),
);

/**
 * Whether two characters are listed as mixed up, or are the capital and the small letter of one letter,
 * which is one letter to a teacher, however unlike they look.
 */
export function areMixedUp(one: string, other: string): boolean {
  const [small, otherSmall] = [one.toLowerCase(), other.toLowerCase()];
  const isCyrillic = small >= 'а' && small <= 'ё';
  return (
    small === otherSmall || PAIRS.has(one + other) || (isCyrillic && PAIRS.has(small + otherSmall))
  );
}
