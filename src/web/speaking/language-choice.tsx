// At the foot of every screen: the language of the app, each by its own name. Not there where there is but one.
import { useState } from 'react';
import { isLanguage, LANGUAGES, type Language } from '../../languages/index.ts';
import { words } from '../words.ts';
import { changeLanguage } from './use-language.ts';

export function LanguageChoice({ language }: { readonly language: Language }) {
  const [isMissing, setMissing] = useState(false);
  if (LANGUAGES.length < 2) return null;
  const choose = async (tag: string) => {
    if (isLanguage(tag)) setMissing(!(await changeLanguage(tag)));
  };
  return (
    <div className="language">
      <label>
        {words.language}{' '}
        <select value={language} onChange={({ target }) => void choose(target.value)}>
          {LANGUAGES.map((each) => (
            <option key={each} value={each} lang={each}>
              {ownNameOf(each)}
            </option>
          ))}
        </select>
      </label>
      <p aria-live="polite">{isMissing ? words.noLanguage : ''}</p>
    </div>
  );
}

/** As its readers write it, such as `Deutsch`; its tag where the browser knows no name. */
function ownNameOf(language: Language): string {
  const name = new Intl.DisplayNames(language, { type: 'language' }).of(language) ?? language;
  return name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
}
