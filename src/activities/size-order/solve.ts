// Finds everything that the printed figures may be said to be in order of size, from the page alone.
import { type Told, told } from '../../base/index.ts';
import { type Figure, formOf, isShape } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { isOneForm, type SurelyBigger, surelyBigger } from './solve-measures.ts';
import type { Answer, Asked, Printed, Response } from './task.ts';

const MOST_ANSWERS = 20;
const FEWEST = 3;

export function solve({ figures, asked = 'order', response = 'point' }: Printed): Findings<Answer> {
  const isBigger = surelyBigger(figures);
  const answers =
    asked === 'order'
      ? ordersOf(figures.length, isBigger)
      : onesOf(figures.length, asked, isBigger);
  const isDone = asked === 'order' && answers.some(isStraight);
  return {
    answers,
    faults: [
      ...faultsOf(figures),
      ...(isDone ? [told('size-order', 'fault.done')] : []),
      ...responseFaults(figures.length, asked, response),
    ],
  };
}

/** Every order that puts no figure before one that is surely smaller. */
function ordersOf(count: number, isBigger: SurelyBigger): readonly Answer[] {
  const orders: number[][] = [];
  const goOn = (order: readonly number[], left: readonly number[]): void => {
    if (orders.length >= MOST_ANSWERS) return;
    if (left.length === 0) orders.push([...order]);
    const next = left.filter((one) => !left.some((other) => isBigger(one, other)));
    for (const one of next) {
      goOn(
        [...order, one],
        left.filter((other) => other !== one),
      );
    }
  };
  goOn([], placesOf(count));
  return orders;
}

/** Every figure whose rank may be the one asked for: as many are surely smaller at most, and surely bigger. */
function onesOf(
  count: number,
  asked: Exclude<Asked, 'order'>,
  isBigger: SurelyBigger,
): readonly Answer[] {
  const places = placesOf(count);
  const rank = { smallest: 0, middle: (count - 1) / 2, biggest: count - 1 }[asked];
  return places
    .filter((one) => {
      const smaller = places.filter((other) => isBigger(one, other)).length;
      const bigger = places.filter((other) => isBigger(other, one)).length;
      return smaller <= rank && bigger <= count - 1 - rank;
    })
    .map((one) => [one]);
}

function placesOf(count: number): readonly number[] {
  return Array.from({ length: count }, (_, place) => place);
}

/** From left to right, or from right to left. */
function isStraight(order: Answer): boolean {
  const steps = order.slice(1).map((place, index) => place - (order[index] ?? 0));
  return steps.every((step) => step === 1) || steps.every((step) => step === -1);
}

function faultsOf(figures: readonly Figure[]): readonly Told[] {
  const dots = figures.filter((figure) => formOf(figure) === 'dots');
  const isMixed = dots.length > 0 && dots.length < figures.length;
  const isTwofold = dots.some(({ size = 1 }) => size !== (dots[0]?.size ?? 1));
  const areNamed = !isOneForm(figures) && !figures.every((figure) => isShape(formOf(figure)));
  return [
    ...(figures.length < FEWEST ? [told('size-order', 'fault.few')] : []),
    ...(isMixed ? [told('size-order', 'fault.mixed')] : []),
    ...(isTwofold ? [told('size-order', 'fault.twofold')] : []),
    ...(areNamed && dots.length === 0 ? [told('size-order', 'fault.own-order')] : []),
  ];
}

function responseFaults(count: number, asked: Asked, response: Response): readonly Told[] {
  const isOrder = asked === 'order';
  const isUnfit = isOrder ? response === 'ring' : response !== 'point' && response !== 'ring';
  return [
    ...(isUnfit ? [told('size-order', 'fault.response')] : []),
    ...(asked === 'middle' && count % 2 === 0 ? [told('size-order', 'fault.two-middle')] : []),
  ];
}
