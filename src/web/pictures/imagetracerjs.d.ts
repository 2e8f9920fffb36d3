// The part of the tracing library that is used here.
declare module 'imagetracerjs' {
  interface Colour {
    r: number;
    g: number;
    b: number;
    a: number;
  }
  interface Quantised {
    /** Numbers of colours by row, with a border of −1 all round. */
    array: number[][];
    palette: Colour[];
  }
  interface Traced {
    segments: {
      type: 'L' | 'Q';
      x1: number;
      y1: number;
      x2: number;
      y2: number;
      x3?: number;
      y3?: number;
    }[];
    isholepath: boolean;
  }
  /** Steps on the way from one form to another; nothing in them is read here. */
  type Step = object & { readonly step?: never };
  const tracer: {
    colorquantization(
      image: { width: number; height: number; data: Uint8ClampedArray },
      options: {
        pal: Colour[];
        colorquantcycles: number;
        mincolorratio: number;
        blurradius: number;
      },
    ): Quantised;
    layeringstep(quantised: Pick<Quantised, 'array'>, colour: number): number[][];
    pathscan(layer: number[][], pathomit: number): Step[];
    internodes(paths: Step[], options: { rightangleenhance: boolean }): Step[];
    batchtracepaths(paths: Step[], ltres: number, qtres: number): Traced[];
  };
  export default tracer;
}
