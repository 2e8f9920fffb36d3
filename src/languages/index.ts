// Languages and their messages.
export {
  type Catalogue,
  loadAllCatalogues,
  loadCatalogue,
  loadedLanguages,
  registerCatalogue,
} from './catalogues.ts';
export { type Direction, directionOf } from './direction.ts';
export { isLanguage, LANGUAGES, type Language } from './language.ts';
export {
  hasPlaces,
  inEachLanguage,
  type KeyUnder,
  type Messages,
  type Say,
  sayIn,
  type Values,
} from './say.ts';
