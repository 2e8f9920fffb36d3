// Finds which control a refusal speaks of.

/** `recipe › parts[0].values.boxes` and `in-every-box › boxes` are both about `boxes`. */
export function lastName(at: string): string {
  return at.match(/(\w+)\W*$/)?.[1] ?? '';
}
