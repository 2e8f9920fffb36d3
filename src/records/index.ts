// Children, results, plans and the stock as entries that never change: their ids, views, backup file, merging, migration.
export { BACKUP_CHARACTERS, backupText, laterVersion, readBackup } from './backup.ts';
export * from './entry.ts';
export { isDay, isMonth, readEntry } from './entry-schema.ts';
export {
  byId,
  clockTime,
  ID_RANDOM_BYTES,
  type Id,
  type IdSource,
  newId,
  timeOfId,
} from './ids.ts';
export { changedSince, idsOfChild, idsOfDemo, merged } from './merge.ts';
export { migrated, STEPS, type Step, versionAfter } from './migrate.ts';
export { idsOfPicture, type KeptPicture, keptPictures } from './pictures.ts';
export {
  type Child,
  type ResultInView,
  type Shelf,
  type StockInView,
  shelfOf,
  type View,
  viewOf,
} from './views.ts';
