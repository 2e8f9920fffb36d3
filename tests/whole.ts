// Whether tests take all of what they otherwise take a sample of: for the night, with SAMEWISE_ALL set to anything.

export const IS_WHOLE = process.env.SAMEWISE_ALL !== undefined;
