// What an activity can be asked for: named parameters with finite ranges, the one source for
// checking, command help, the app's controls, the schema and the sheet code.
import { accept, asGot, type Refusal, type Result, refuse, told } from '../base/index.ts';
import { withNearestContent } from './nearest-content.ts';

export interface WholeParameter {
  readonly kind: 'whole';
  readonly min: number;
  readonly max: number;
}
export interface ChoiceParameter<V extends string = string> {
  readonly kind: 'choice';
  readonly values: readonly V[];
}
export interface YesNoParameter {
  readonly kind: 'yes-no';
}
export type Parameter = WholeParameter | ChoiceParameter | YesNoParameter;
export type ParameterSpecs = Readonly<Record<string, Parameter>>;

export type ValueOf<P extends Parameter> = P extends WholeParameter
  ? number
  : P extends ChoiceParameter<infer V>
    ? V
    : boolean;
export type ValuesOf<S extends ParameterSpecs> = { readonly [K in keyof S]: ValueOf<S[K]> };
export type Value = number | string | boolean;
export type Values = Readonly<Record<string, Value>>;

export function whole(min: number, max: number): WholeParameter {
  return { kind: 'whole', min, max };
}
export function choice<const V extends string>(...values: readonly V[]): ChoiceParameter<V> {
  return { kind: 'choice', values };
}
export function yesNo(): YesNoParameter {
  return { kind: 'yes-no' };
}

/**
 * Reads one value of each parameter from `given`, taking what is absent from `base`.
 * `at` names the place in refusals. Every fault is told, not the first alone.
 */
export function readValues<S extends ParameterSpecs>(
  specs: S,
  given: Readonly<Record<string, unknown>>,
  base: ValuesOf<S>,
  at: string,
): Result<ValuesOf<S>> {
  const refusals: Refusal[] = [];
  for (const name of Object.keys(given)) {
    if (!Object.hasOwn(specs, name)) {
      refusals.push({ code: 'unknown-field', at, got: asGot(name), choices: Object.keys(specs) });
    }
  }
  const values: Record<string, Value> = {};
  for (const [name, spec] of Object.entries(specs)) {
    const value = Object.hasOwn(given, name) ? given[name] : base[name];
    const refusal = refusalOf(spec, value, `${at} › ${name}`);
    if (refusal) refusals.push(refusal);
    else values[name] = value as Value;
  }
  return refusals.length > 0 ? refuse(...refusals) : accept(values as ValuesOf<S>);
}

function refusalOf(spec: Parameter, value: unknown, at: string): Refusal | undefined {
  switch (spec.kind) {
    case 'whole':
      if (typeof value !== 'number' || !Number.isInteger(value)) {
        return {
          code: 'wrong-type',
          at,
          got: asGot(value),
          expected: told('reasons', 'expected.whole', { min: spec.min, max: spec.max }),
        };
      }
      return value < spec.min || value > spec.max
        ? { code: 'out-of-range', at, got: value, min: spec.min, max: spec.max }
        : undefined;
    case 'choice':
      return typeof value === 'string' && spec.values.includes(value)
        ? undefined
        : withNearestContent({ code: 'not-a-choice', at, got: asGot(value), choices: spec.values });
    case 'yes-no':
      return typeof value === 'boolean'
        ? undefined
        : {
            code: 'wrong-type',
            at,
            got: asGot(value),
            expected: told('reasons', 'expected.yes-no'),
          };
  }
}
