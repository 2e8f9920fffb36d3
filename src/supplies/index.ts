// Stickers, pens and tools: what the house has, what a pack uses, what is lacking.
export {
  isEnough,
  type Lacking,
  lackingFor,
  type MaterialsOf,
  materialsReader,
  stockNow,
} from './stock.ts';
