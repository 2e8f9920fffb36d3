// Parts of the app that are fetched when they are first drawn; where one cannot be, that is said in its place.
import { type ComponentType, lazy, useState } from 'react';
import { Caught, type CaughtProps, Unfetched } from './caught.tsx';

/** `as`: what stands in its place where it cannot be fetched. While it is on its way, the `Suspense` around it is drawn. */
export function fetched<P extends object>(
  load: () => Promise<{ readonly default: ComponentType<P> }>,
  as: CaughtProps['as'],
): ComponentType<P> {
  const asked = () =>
    lazy(() =>
      load().catch((fault: unknown) => {
        throw new Unfetched(String(fault));
      }),
    );
  // One for all that draw it, so that it is fetched once.
  let latest = asked();
  // biome-ignore lint/correctness/noComponentHookFactories: made once for each part, not while drawing
  return function Fetched(props: P) {
    const [There, setThere] = useState(() => latest);
    const again = () => {
      latest = asked();
      setThere(() => latest);
    };
    return (
      <Caught as={as} onAgain={again}>
        <There {...props} />
      </Caught>
    );
  };
}
