// The app: its name, its places, and the screen that is open.
import { Suspense } from 'react';
import { I18nProvider } from 'react-aria-components/I18nProvider';
import { type Result, told } from '../base/index.ts';
import type { Day, Entry } from '../records/index.ts';
import { Caught } from './caught.tsx';
import { fetched } from './fetched.tsx';
import type { Maker } from './making/maker.ts';
import { useCatalogue } from './making/use-shown.ts';
import type { Newer } from './offline/newer.ts';
import { NewerLine } from './offline/newer-line.tsx';
import type { PlaceName } from './place-names.ts';
import { Places, usePlace } from './places.tsx';
import { SCREENS } from './places-table.ts';
import type { Planner } from './planning/planner.ts';
import type { ScreenProps } from './screen-props.ts';
import { localeOf } from './speaking/dates.ts';
import { LanguageChoice } from './speaking/language-choice.tsx';
import { useLanguage } from './speaking/use-language.ts';
import { words } from './words.ts';

/** Fetched with the store of the records when a place about children is first gone to, so that Make is there as soon as ever. */
const Ground = fetched(() => import('./children/ground.tsx'), 'main');

export interface AppProps {
  readonly maker: Maker;
  readonly planner: Planner;
  readonly newer: Newer;
}

export function App({ maker, planner, newer }: AppProps) {
  const language = useLanguage();
  const catalogue = useCatalogue(maker, language);
  const places = usePlace();
  return (
    <I18nProvider locale={localeOf(language)}>
      <header className="head">
        <h1>{words.appName}</h1>
        <NewerLine newer={newer}>{words.tagline}</NewerLine>
        <Places {...places} />
      </header>
      <Screen
        key={language}
        place={places.place}
        maker={maker}
        planner={planner}
        catalogue={catalogue}
      />
      <footer className="foot">
        <LanguageChoice language={language} />
        <p>{words.local}</p>
        {catalogue === undefined ? null : (
          <p>
            <bdi lang="en">{catalogue.credit}.</bdi>
          </p>
        )}
      </footer>
    </I18nProvider>
  );
}

function Screen({ place, ...props }: ScreenProps & { readonly place: PlaceName }) {
  const There = SCREENS[place];
  if (There === undefined) throw new Error(`${place}: expected a screen`);
  if (place === 'make') {
    return (
      <Caught as="main">
        <There {...props} />
      </Caught>
    );
  }
  const opening = <main aria-busy="true">{words.opening}</main>;
  return (
    <Suspense fallback={opening}>
      <Ground place={place} onTryDemo={(day) => demoGroup(props.planner, day)}>
        <Suspense fallback={opening}>
          <There {...props} />
        </Suspense>
      </Ground>
    </Suspense>
  );
}

async function demoGroup(planner: Planner, day: Day): Promise<Result<readonly Entry[]>> {
  const reply = await planner.ask('demo', { day });
  if (reply.ok) return { ok: true, value: reply.value };
  const refusal = {
    code: 'missing',
    at: 'demo group',
    expected: told('reasons', 'expected.group'),
  } as const;
  return { ok: false, refusals: [refusal] };
}
