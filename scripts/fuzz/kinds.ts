// All kinds of input that come from outside.
import { backupFileKind, storedEntryKind } from './backup-file.ts';
import { commandLineKind } from './command-line.ts';
import { type AnyKind, anyKind } from './kind.ts';
import { linkKind } from './link.ts';
import { imageBytesKind, photoKind, storedPathKind } from './own-picture.ts';
import { packFileKind } from './pack-file.ts';
import { recipeFileKind, stockFileKind } from './recipe-file.ts';
import { longCodeKind, sheetCodeKind } from './sheet-code.ts';
import { smallTextKind } from './small-texts.ts';

export function kindsOf(): readonly AnyKind[] {
  return [
    anyKind(packFileKind()),
    anyKind(recipeFileKind()),
    anyKind(stockFileKind()),
    anyKind(linkKind()),
    anyKind(sheetCodeKind()),
    anyKind(longCodeKind()),
    anyKind(backupFileKind()),
    anyKind(storedEntryKind()),
    anyKind(storedPathKind()),
    anyKind(imageBytesKind()),
    anyKind(photoKind()),
    anyKind(smallTextKind()),
    anyKind(commandLineKind()),
  ];
}
