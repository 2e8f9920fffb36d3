// Printed words in scripts beyond the page's letter table: fetched only where a page needs one.
import { hasFace, registerFaces, type Script } from '../page/index.ts';
import { type FontFile, SCRIPT_FONTS, type ScriptFont } from './fonts.ts';
import { ORDERING } from './ordering.ts';
import { shapedFace } from './shaper.ts';
import { unpackFont } from './woff.ts';

export { type FontFile, SCRIPT_FONTS } from './fonts.ts';
export { unpackFont } from './woff.ts';

/** Registers the faces of scripts that have none yet; pages made after it has ended are set with them. */
export async function loadScripts(
  scripts: readonly Script[],
  read: (file: FontFile) => Promise<Uint8Array>,
): Promise<void> {
  const wanted = scripts.filter((script) => !hasFace(script));
  const loaded = wanted.map(async (script) => {
    const { tag, ...files }: ScriptFont & { regular: FontFile; bold: FontFile } =
      SCRIPT_FONTS[script];
    const [regular, bold] = await Promise.all([read(files.regular), read(files.bold)]);
    const face = (file: Uint8Array) => shapedFace(unpackFont(file), tag);
    return [script, { regular: face(regular), bold: face(bold) }] as const;
  });
  registerFaces(new Map(await Promise.all(loaded)), ORDERING);
}
