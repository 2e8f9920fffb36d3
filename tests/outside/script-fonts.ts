// The fonts of other scripts for tests, and the words that they are tested with.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { SCRIPTS, type Script } from '../../src/page/index.ts';
import { type FontFile, loadScripts } from '../../src/shaping/index.ts';

const { resolve } = createRequire(import.meta.url);

/** The file as it comes in its package. */
export function fontFile(file: FontFile): Uint8Array {
  const place = file.startsWith('assets/')
    ? new URL(`../../${file}`, import.meta.url)
    : resolve(file);
  return new Uint8Array(readFileSync(place));
}

export async function loadAllScripts(): Promise<void> {
  await loadScripts(SCRIPTS, async (file) => fontFile(file));
}

/** Words by script: conjuncts, reph, signs before their letter, lam with alef, marks above and below. */
export const WORDS: Readonly<Record<Script, readonly string[]>> = {
  extended: ['Соня', 'Щёлк', 'Ђорђе', 'Їжак', 'Nguyễn', 'Ọlá', 'Ǎnjiā', 'и́ва'],
  greek: ['Ελένη', 'Γιώργος', 'Ϊκαρος', 'ΐδιος', 'ήλιος'],
  hebrew: ['אורי', 'שלום', 'נֹעַם', 'שִׁירָה', 'ילד', 'יוֹסֵף'],
  arabic: [
    'ليلى',
    'سلام',
    'لا',
    'الأولاد',
    'مُحَمَّد',
    'كلّ',
    'صورة',
    'مختلفة',
    'إلى',
    'الآن',
    'شيء',
    'مؤمن',
    'طفلٌ',
    'عبدالله',
    'الله',
    'بيت',
    'هدية',
    'قلم',
    'كتاب',
    'غزال',
    'ضفدع',
    'ظرف',
    'ثلاث',
    'لإجابة',
    'سؤال',
    'پدر',
    'چای',
    'گل',
    '١٢٣',
  ],
  devanagari: [
    'आरव',
    'क्षितिज',
    'हर्ष',
    'कि',
    'चित्र',
    'बच्चे',
    'विद्यार्थी',
    'ज्ञान',
    'श्री',
    'प्रश्न',
    'उत्तर',
    'र्क',
    'र्कि',
    'द्वितीय',
    'कृष्ण',
    'ट्रेन',
    'बाक़ी',
    'हैं',
    'अँगूठी',
    'दुःख',
    'स्त्री',
    'ह्रदय',
    'शृंगार',
    'रूप',
    'रुको',
    'पढ़ो',
    'ऑक्टोपस',
    'क्‍ष',
    'न्‍',
    '१२३',
    'लड्डू',
  ],
};
