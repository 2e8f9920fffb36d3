// Which child a screen is about: the chosen one, else the one of the latest record, else the first.
import type { Child, Id, View } from '../../records/index.ts';

/** The child in view; none only where no child is. */
export function childInView(view: View, chosen: Id | undefined): Child | undefined {
  return view.children.find(({ id }) => id === chosen) ?? lastRecorded(view);
}

function lastRecorded({ children, results }: View): Child | undefined {
  const latest = ({ id }: Child): Id =>
    results
      .get(id)
      ?.map((result) => result.id)
      .sort()
      .at(-1) ?? '';
  return children.reduce<Child | undefined>(
    (best, child) => (best === undefined || latest(child) > latest(best) ? child : best),
    undefined,
  );
}
