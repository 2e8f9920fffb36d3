// A button that goes from the screen once it is pressed, or when nothing is left to be done with it.
import { type ReactNode, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import { useFocusPassedOn } from './use-focus-passed-on.ts';

export interface PassingButtonProps {
  readonly className: string;
  readonly 'aria-label'?: string;
  readonly onPress: () => void;
  /** What has the focus after it. */
  readonly next: () => HTMLElement | null | undefined;
  readonly children: ReactNode;
}

export function PassingButton({ next, children, ...rest }: PassingButtonProps) {
  const own = useRef<HTMLButtonElement>(null);
  useFocusPassedOn(own, next);
  return (
    <Button ref={own} {...rest}>
      {children}
    </Button>
  );
}
