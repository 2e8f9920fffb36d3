// What is folded away until wanted, behind its heading.
import { memo, type ReactNode } from 'react';
import { Button } from 'react-aria-components/Button';
import {
  Disclosure,
  DisclosurePanel,
  type DisclosureProps,
} from 'react-aria-components/Disclosure';
import { Heading } from 'react-aria-components/Heading';

export interface FoldProps
  extends Pick<
    DisclosureProps,
    'className' | 'defaultExpanded' | 'isExpanded' | 'onExpandedChange'
  > {
  readonly title: ReactNode;
  readonly level: 2 | 3 | 4;
  /** The heading is set out so that its words stand in line with what is above. */
  readonly isOutward?: boolean;
  readonly children: ReactNode;
}

/** Drawn anew only when it is to show something else; what nobody sees is best left out of it. */
export const Fold = memo(({ title, level, isOutward = false, children, ...rest }: FoldProps) => {
  return (
    <Disclosure {...rest}>
      <Heading level={level} className="more-heading">
        <Button slot="trigger" className={isOutward ? 'quiet fold outward' : 'quiet fold'}>
          {title}
        </Button>
      </Heading>
      <DisclosurePanel>{children}</DisclosurePanel>
    </Disclosure>
  );
});
