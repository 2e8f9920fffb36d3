// What lies on the table while a sheet is changed; fetched apart, as most sheets are printed as they are.
export { ChangingPaper } from './changing-paper.tsx';
export { ChangingProof } from './changing-proof.tsx';
