// Ids that sort by time: UUIDs of version 7 (RFC 9562, section 5.7), and of version 8 for what gets a second id.

/** 128 bits as 36 characters in small hexadecimal digits; comparing the texts compares the times. */
export type Id = string;

/** Version 7 or 8, and a time below 2^44 ms (the year 2527), so that there is always a later id. */
export const ID_FORM = /^0[0-9a-f]{7}-[0-9a-f]{4}-[78][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

/** The last millisecond that is taken from a clock; the 2^20 ms after it, 17 minutes, are left for counting up. */
const LATEST_CLOCK_MS = 2 ** 44 - 1 - 2 ** 20;

/** What a clock says, in ms since 1970, brought to the times that ids can carry: a clock may be set to any year. */
export function clockTime(now: number): number {
  return Math.min(Math.max(Math.floor(now), 0), LATEST_CLOCK_MS);
}

/** Bytes of randomness that one id takes. */
export const ID_RANDOM_BYTES = 10;

const FREE_BITS = 74n;
const LOW_BITS = 62n;
/** Steps within one millisecond are random too, up to 2^32: two copies of one device do not meet. */
const STEP_BITS = 32n;

const FNV_START = 0x6c62272e07bb014262b821756295c58dn;
const FNV_PRIME = (1n << 88n) + 0x13bn;

export interface IdSource {
  /** Milliseconds since 1970 as the device's clock has them, as `clockTime` gives them. */
  readonly now: number;
  /** `ID_RANDOM_BYTES` random bytes. */
  readonly random: Uint8Array;
  /** The greatest id that this device has made or seen. */
  readonly last?: Id;
}

/**
 * An id greater than `last`, and of the time `now` unless the clock stands before `last`: then
 * `last` is counted up by a random step (RFC 9562, section 6.2, method 2).
 */
export function newId({ now, random, last }: IdSource): Id {
  const free = numberOf(random) & ((1n << FREE_BITS) - 1n);
  if (last === undefined || now > timeOfId(last)) return idOf(BigInt(now), free, 7);
  const step = (free & ((1n << STEP_BITS) - 1n)) + 1n;
  const next = (BigInt(timeOfId(last)) << FREE_BITS) + freeOf(last) + step;
  // The version is no part of the count: only a step of the time is sure to pass an id of version 8.
  return last.charAt(14) === '8'
    ? idOf(BigInt(timeOfId(last) + 1), free, 7)
    : idOf(next >> FREE_BITS, next & ((1n << FREE_BITS) - 1n), 7);
}

/** The time that an id carries, in milliseconds since 1970. */
export function timeOfId(id: Id): number {
  return Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16);
}

/** A second id beside `id`, of the same millisecond; the same text gives the same one. */
export function secondId(id: Id, text: string): Id {
  return idOf(BigInt(timeOfId(id)), hashOf(`${id} ${text}`), 8);
}

/** For `sort`: plain order of characters, the same in every language. */
export function byId(one: { readonly id: Id }, other: { readonly id: Id }): number {
  return one.id < other.id ? -1 : Number(one.id > other.id);
}

function idOf(time: bigint, free: bigint, version: 7 | 8): Id {
  const high = free >> LOW_BITS;
  const low = (2n << LOW_BITS) | (free & ((1n << LOW_BITS) - 1n));
  const bits = (time << 80n) | (BigInt(version) << 76n) | (high << 64n) | low;
  const digits = bits.toString(16).padStart(32, '0');
  const id = [0, 8, 12, 16, 20].map((from, at, cuts) => digits.slice(from, cuts[at + 1])).join('-');
  if (!ID_FORM.test(id)) throw new Error(`no id for the time ${time}`);
  return id;
}

/** The 74 bits of an id that are neither time nor version nor variant. */
function freeOf(id: Id): bigint {
  const digits = id.replaceAll('-', '');
  const high = BigInt(`0x${digits.slice(13, 16)}`);
  const low = BigInt(`0x${digits.slice(16)}`) & ((1n << LOW_BITS) - 1n);
  return (high << LOW_BITS) | low;
}

function numberOf(bytes: Uint8Array): bigint {
  return bytes.reduce((sum, byte) => (sum << 8n) | BigInt(byte), 0n);
}

/** FNV-1a of 128 bits (Fowler, Noll and Vo; constants from memory) over UTF-16 units, folded to the 74 free bits. */
function hashOf(text: string): bigint {
  let hash = FNV_START;
  for (let at = 0; at < text.length; at++) {
    hash = BigInt.asUintN(128, (hash ^ BigInt(text.charCodeAt(at))) * FNV_PRIME);
  }
  return (hash ^ (hash >> FREE_BITS)) & ((1n << FREE_BITS) - 1n);
}
