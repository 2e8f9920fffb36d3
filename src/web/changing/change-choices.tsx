// What a chosen figure can become, and what can be done with it: a small drawer beside it.
import { type ReactNode, type RefObject, useEffect, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog } from 'react-aria-components/Dialog';
import { Heading } from 'react-aria-components/Heading';
import { Popover } from 'react-aria-components/Popover';
import type { Deed, Spot } from '../../editing/index.ts';
import type { Maker } from '../making/maker.ts';
import { capital } from '../words.ts';
import type { ChangeOffer, ChangeOffers } from './change-talk.ts';
import type { Changing } from './use-changing.ts';
import { words } from './words.ts';

export interface ChangeChoicesProps {
  readonly maker: Maker;
  readonly changing: Changing;
  readonly at: Spot;
  readonly trigger: RefObject<HTMLElement | null>;
  readonly onSwap: () => void;
  readonly onClose: () => void;
}

export function ChangeChoices({
  maker,
  changing,
  at,
  trigger,
  onSwap,
  onClose,
}: ChangeChoicesProps) {
  const offers = useOffers(maker, changing, at);
  const task = changing.held.tasks[at.task];
  const standing = task?.places.find(({ place }) => place === at.place);
  const held = standing ?? task?.empty.find(({ place }) => place === at.place);
  const act = (deed: Deed) => {
    onClose();
    changing.act(deed);
  };
  return (
    <Drawer title={held?.name ?? ''} trigger={trigger} onClose={onClose}>
      <div className="chips">
        <Button className="chip" onPress={() => act({ kind: 'lock', at })}>
          {held?.isLocked ? words.unlock : words.lock}
        </Button>
        <SwapChip onSwap={onSwap} onClose={onClose} />
        {offers?.canLeave ? (
          <Button className="chip" onPress={() => act({ kind: 'become', at, figure: null })}>
            {words.leave}
          </Button>
        ) : null}
      </div>
      {offers === undefined ? (
        <p className="help">{words.loading}</p>
      ) : (
        <Offers offers={offers} at={at} act={act} />
      )}
    </Drawer>
  );
}

/** The drawer is out of the way while the other one is chosen. */
export function SwapChip({ onSwap, onClose }: Pick<ChangeChoicesProps, 'onSwap' | 'onClose'>) {
  return (
    <Button
      className="chip"
      onPress={() => {
        onClose();
        onSwap();
      }}
    >
      {words.swap}
    </Button>
  );
}

interface DrawerProps {
  readonly title: string;
  readonly trigger: RefObject<HTMLElement | null>;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function Drawer({ title, trigger, onClose, children }: DrawerProps) {
  return (
    <Popover
      className="drawer change-drawer"
      isOpen
      triggerRef={trigger}
      placement="bottom"
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <Dialog className="change-choices">
        <div className="change-head">
          <Heading slot="title" className="drawer-title">
            {capital(title)}
          </Heading>
          <Button className="quiet" onPress={onClose}>
            {words.close}
          </Button>
        </div>
        {children}
      </Dialog>
    </Popover>
  );
}

interface OffersProps {
  readonly offers: ChangeOffers;
  readonly at: Spot;
  readonly act: (deed: Deed) => void;
}

function Offers({ offers, at, act }: OffersProps) {
  return (
    <>
      {offers.groups.map(({ attribute, label, offers: figures }) => (
        <Named key={attribute} label={label}>
          {figures.map((offer) => (
            <Picture
              key={offer.label}
              offer={offer}
              group={label}
              onPress={() => act({ kind: 'become', at, figure: offer.figure })}
            />
          ))}
        </Named>
      ))}
      {offers.put.length === 0 ? null : (
        <Named label={words.put}>
          {offers.put.map((offer) => (
            <Picture
              key={offer.label}
              offer={offer}
              group={words.put}
              onPress={() => act({ kind: 'become', at, figure: offer.figure })}
            />
          ))}
        </Named>
      )}
      <Facts offers={offers} at={at} act={act} />
      {offers.shapes.length === 0 ? null : (
        <div className="chips change-shapes">
          {offers.shapes.map(({ label, change }) => (
            <Button key={label} className="chip" onPress={() => act({ kind: 'shape', at, change })}>
              {label}
            </Button>
          ))}
        </div>
      )}
    </>
  );
}

/** What the key asks for beside the figure, where it does. */
export function Facts({ offers, at, act }: OffersProps) {
  return offers.facts.map(({ fact, value, choices }) => (
    <Named key={fact} label={words.asksFor}>
      {choices.map((choice) => (
        <Button
          key={choice.value}
          className="chip"
          aria-pressed={choice.value === value}
          onPress={() => act({ kind: 'tell', task: at.task, fact, value: choice.value })}
        >
          {choice.label}
        </Button>
      ))}
    </Named>
  ));
}

export function Named({
  label,
  children,
}: {
  readonly label: string;
  readonly children: ReactNode;
}) {
  return (
    <fieldset className="change-group">
      <legend className="field-label">{label}</legend>
      <div className="change-offers">{children}</div>
    </fieldset>
  );
}

interface PictureProps {
  readonly offer: ChangeOffer;
  readonly group: string;
  readonly onPress: () => void;
}

function Picture({ offer, group, onPress }: PictureProps) {
  return (
    <Button
      className="change-offer"
      aria-label={words.offer(group, offer.label)}
      aria-pressed={offer.isNow}
      onPress={onPress}
    >
      <span
        aria-hidden="true"
        className="change-picture"
        // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by this program's own press
        dangerouslySetInnerHTML={{ __html: offer.svg }}
      />
      <span className="change-label">{offer.label}</span>
    </Button>
  );
}

export function useOffers(maker: Maker, changing: Changing, at: Spot): ChangeOffers | undefined {
  const [offers, setOffers] = useState<ChangeOffers>();
  const { under } = changing;
  const { task, place } = at;
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once, for the figure as it was chosen
  useEffect(() => {
    let isWanted = true;
    maker.ask('offers', { ...under, at: { task, place } }).then((reply) => {
      if (isWanted && reply.ok) setOffers(reply.value);
    });
    return () => {
      isWanted = false;
    };
  }, [maker, task, place]);
  return offers;
}
