// Languages and their messages.
export { CATALOGUES, type Catalogue } from './catalogues.ts';
export { LANGUAGES, type Language } from './language.ts';
export { inEachLanguage, type Messages, type Say, sayIn, type Values } from './say.ts';
