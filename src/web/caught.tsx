// Holds a part of the screen in which something went wrong, so that all else goes on: it is said there, with a way to try again.
import { Component, type ReactNode } from 'react';
import { Button } from 'react-aria-components/Button';
import { words } from './words.ts';

/** A part of the app that could not be fetched. */
export class Unfetched extends Error {}

export interface CaughtProps {
  /** What stands in its place: the main part of a screen, or something inside it. */
  readonly as: 'main' | 'div';
  /** Makes ready for another try. */
  readonly onAgain?: () => void;
  readonly children: ReactNode;
}

interface CaughtState {
  readonly fault?: unknown;
}

export class Caught extends Component<CaughtProps, CaughtState> {
  override state: CaughtState = {};

  static getDerivedStateFromError(fault: unknown): CaughtState {
    return { fault };
  }

  readonly again = () => {
    this.props.onAgain?.();
    this.setState({ fault: undefined });
  };

  override render(): ReactNode {
    const { as: Place, children } = this.props;
    const { fault } = this.state;
    if (fault === undefined) return children;
    return (
      <Place>
        <div className="fault" role="alert">
          <p>{fault instanceof Unfetched ? words.notFetched : words.defect(messageOf(fault))}</p>
          <Button className="plain" onPress={this.again}>
            {words.tryAgain}
          </Button>
        </div>
      </Place>
    );
  }
}

function messageOf(fault: unknown): string {
  return fault instanceof Error ? fault.message : String(fault);
}
