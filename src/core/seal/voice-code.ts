import { sha256 } from "@noble/hashes/sha2.js";
import { utf8ToBytes } from "@noble/hashes/utils.js";
import type { WalkId } from "../units/index.ts";
import type { Tally } from "./tally.ts";

/** 32 letters that are told apart by ear and eye, five bits each; the hub's codes use the same. */
const LETTERS = "ABCDEFGHJKMNPQRSTUVWXYZ023456789";
const LENGTH = 12;
const GROUP = 3;

/** What a code is made of ([SEL6]), a part a line: whoever has it can work out the code. */
export const codedText = (
  walk: WalkId,
  { entries, root, order }: Pick<Tally, "entries" | "root" | "order">,
): string => ["tetherline code 1", walk, entries, root, order, ""].join("\n");

/** The code of what a walk's entries come to, to be read aloud ([SEL6]): four groups of three letters, with hyphens between. */
export function voiceCode(walk: WalkId, tally: Pick<Tally, "entries" | "root" | "order">): string {
  const hash = sha256(utf8ToBytes(codedText(walk, tally)));
  let bits = hash.subarray(0, 8).reduce((sum, byte) => sum * 256n + BigInt(byte), 0n) >> 4n;
  let letters = "";
  for (let at = 0; at < LENGTH; at += 1) {
    letters = LETTERS.charAt(Number(bits % 32n)) + letters;
    bits /= 32n;
  }
  return groupsOf(letters).join("-");
}

/** A code that was typed, as its groups: small letters and any separators are taken; `null` when it has not twelve letters of the alphabet. */
export function typedGroups(typed: string): readonly string[] | null {
  const letters = typed.toUpperCase().replaceAll(/[^0-9A-Z]/g, "");
  const isCode = letters.length === LENGTH && [...letters].every((letter) => LETTERS.includes(letter));
  return isCode ? groupsOf(letters) : null;
}

/** The groups, from 1, in which two codes differ; empty when they are the same. `null` when the typed one is no code. */
export function differingGroups(code: string, typed: string): readonly number[] | null {
  const groups = typedGroups(typed);
  return groups && code.split("-").flatMap((group, index) => (group === groups[index] ? [] : [index + 1]));
}

const groupsOf = (letters: string): string[] =>
  Array.from({ length: LENGTH / GROUP }, (_, at) => letters.slice(at * GROUP, (at + 1) * GROUP));
