// The places of the app as links, and which one the address names.
import { useEffect, useState } from 'react';
import { remembersChild } from './children/remembered.ts';
import { useKept } from './offline/kept.ts';
import { hashOf, type PlaceName, placeOf } from './place-names.ts';
import { PLACES_THERE } from './places-table.ts';
import { words } from './words.ts';

export interface PlaceState {
  readonly place: PlaceName;
  /** Where Make is found as it was left. */
  readonly recipe: string;
}

export function usePlace(): PlaceState {
  const [place, setPlace] = useState(() => placeNow(location.hash));
  const [recipe, setRecipe] = useKept('recipe', readRecipe);
  useEffect(() => {
    const follow = ({ oldURL, newURL }: HashChangeEvent) => {
      const left = new URL(oldURL).hash;
      if (left !== '' && placeNow(left) === 'make') setRecipe(left);
      setPlace(placeNow(new URL(newURL).hash));
    };
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, [setRecipe]);
  const title = words.title(place);
  useEffect(() => {
    document.title = title;
  }, [title]);
  useEffect(() => {
    // Make writes its recipe into an empty address; any other place its name, so that Back leads to it.
    if (location.hash === '' && place !== 'make') history.replaceState(null, '', hashOf(place));
  }, [place]);
  return { place, recipe };
}

function placeNow(hash: string): PlaceName {
  return placeOf(hash, PLACES_THERE, remembersChild());
}

/** The address of Make as it was left; that of a new recipe where it was not. */
function readRecipe(left: unknown): string {
  return typeof left === 'string' && placeNow(left) === 'make' ? left : hashOf('make');
}

export function Places({ place, recipe }: PlaceState) {
  return (
    <nav className="places" aria-label={words.placesLabel}>
      {PLACES_THERE.map((name) => (
        <a
          key={name}
          href={name === 'make' ? recipe : hashOf(name)}
          aria-current={name === place ? 'page' : undefined}
          // The address of Make changes while one is there: a second press must not begin it anew.
          onClick={(event) => name === place && event.preventDefault()}
        >
          {words.places[name]}
        </a>
      ))}
    </nav>
  );
}
