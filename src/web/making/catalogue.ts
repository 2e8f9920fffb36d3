// What the controls must know, gathered from the registry: activities with their words, papers, prints.
import {
  ACTIVITY_IDS,
  type ActivityId,
  activityOf,
  type ChoiceParameter,
} from '../../activities/index.ts';
import { alphabetOf, CONTENT_IDS, offeredIn, PICTURE_CREDIT } from '../../figures/index.ts';
import {
  HANDS,
  INKS,
  MARGINS,
  ORIENTATIONS,
  PAPER_NAMES,
  PRINT_CHOICES,
} from '../../page/index.ts';
import { COLOUR_NAMES, hexOf } from '../../palette/index.ts';
import { frameworkNames, SIZES, takesOwnPictures } from '../../sheets/index.ts';
import { languageNow } from '../speaking/language-now.ts';
import type { ActivityCard, Catalogue } from './protocol.ts';

export function gatherCatalogue(): Catalogue {
  return {
    activities: ACTIVITY_IDS.map(cardOf),
    papers: PAPER_NAMES,
    orientations: ORIENTATIONS,
    prints: PRINT_CHOICES,
    layouts: { hand: HANDS, size: SIZES, ink: INKS, margin: MARGINS },
    colours: COLOUR_NAMES.map((name) => ({ name, hex: hexOf(name) })),
    letterContents: CONTENT_IDS.filter((id) => alphabetOf(id) !== ''),
    frameworks: frameworkNames(languageNow()),
    credit: PICTURE_CREDIT,
  };
}

function cardOf(id: ActivityId): ActivityCard {
  const { parameters, ladder, words } = activityOf(id);
  const said = words[languageNow()];
  return {
    id,
    name: said.name,
    about: said.about,
    takesOwnPictures: takesOwnPictures(id),
    parameters: Object.entries(parameters).map(([name, spec]) => ({
      name,
      spec: name === 'content' && spec.kind === 'choice' ? offered(spec) : spec,
      label: said.parameters[name]?.label ?? name,
      help: said.parameters[name]?.help ?? '',
      choices: said.parameters[name]?.choices ?? {},
    })),
    steps: ladder.map((step, index) => ({ ...step, change: said.steps[index] ?? '' })),
  };
}

/** Letters and numerals of the language that is spoken come before those of others. */
function offered(spec: ChoiceParameter): ChoiceParameter {
  return { ...spec, values: offeredIn(languageNow(), spec.values) };
}
