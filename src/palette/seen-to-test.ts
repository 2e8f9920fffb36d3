// Colours as they are seen, in the 8 bits of a screen, for tests.
import { type Hex, hexFrom } from './hex.ts';
import { type Model, rgbAsSeen, type Sight } from './sights.ts';

export function asSeen(hex: Hex, sight: Sight, model: Model = 'machado-light'): Hex {
  return hexFrom(rgbAsSeen(hex, sight, model));
}
