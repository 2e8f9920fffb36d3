// The places of the app as links, and which one the address names: a recipe is Make, `#record` is Record.
import { useEffect, useState } from 'react';
import { words } from './words.ts';

export const PLACES = ['make', 'record'] as const;
export type Place = (typeof PLACES)[number];

/** The place of the part of an address after `#`; whatever is no other place is a recipe. */
export function placeOf(hash: string): Place {
  return hash === '#record' ? 'record' : 'make';
}

export interface PlaceState {
  readonly place: Place;
  /** Where each place is found; Make as it was left. */
  readonly addresses: Readonly<Record<Place, string>>;
}

export function usePlace(): PlaceState {
  const [place, setPlace] = useState(() => placeOf(location.hash));
  const [recipe, setRecipe] = useState('#');
  useEffect(() => {
    const follow = ({ oldURL, newURL }: HashChangeEvent) => {
      const left = new URL(oldURL).hash;
      if (placeOf(left) === 'make') setRecipe(left === '' ? '#' : left);
      setPlace(placeOf(new URL(newURL).hash));
    };
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, []);
  useEffect(() => {
    document.title = words.title(place);
  }, [place]);
  return { place, addresses: { make: recipe, record: '#record' } };
}

export function Places({ place, addresses }: PlaceState) {
  return (
    <nav className="places" aria-label={words.placesLabel}>
      {PLACES.map((name) => (
        <a
          key={name}
          href={addresses[name]}
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
