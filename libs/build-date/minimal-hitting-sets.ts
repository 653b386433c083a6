/** Most members the ground set may have: two bits for each subset are held, a quarter of a megabyte at this size. */
export const MOST_MEMBERS = 20;

/** Within a word of 32 subsets: those that hold member 0, 1, 2, 3 or 4. */
const HOLDS = [0xaaaaaaaa, 0xcccccccc, 0xf0f0f0f0, 0xff00ff00, 0xffff0000];
const MEMBERS_IN_WORD = HOLDS.length;

/**
 * Every minimal set of members that shares a member with each of the given edges (members as bits). Correct and
 * complete for any edges: all 2^n subsets are looked at, 32 in one machine word. Smaller sets come first, then
 * those with earlier members. Throws above 20 members.
 */
export function minimalHittingSets(edges: readonly number[], members: number): number[][] {
  if (members > MOST_MEMBERS) throw new RangeError(`at most ${MOST_MEMBERS} members, not ${members}`);
  const width = Math.max(members, MEMBERS_IN_WORD);
  const misses = subsetsThatMiss(edges, width);
  return minimalOf(misses, width)
    .map((subset) => membersOf(subset, members))
    .sort((a, b) => a.length - b.length || compareLists(a, b));
}

/** Subsets that miss an edge are the subsets of an edge's complement: mark the complements, then close downwards. */
function subsetsThatMiss(edges: readonly number[], width: number): Uint32Array {
  const misses = new Uint32Array(2 ** (width - MEMBERS_IN_WORD));
  const all = 2 ** width - 1;
  for (const edge of edges) {
    const complement = all & ~edge;
    misses[complement >>> MEMBERS_IN_WORD]! |= 1 << (complement & 31);
  }
  for (let member = 0; member < width; member++) spreadDown(misses, member);
  return misses;
}

function spreadDown(sets: Uint32Array, member: number): void {
  if (member < MEMBERS_IN_WORD) {
    for (let at = 0; at < sets.length; at++) sets[at]! |= (sets[at]! & HOLDS[member]!) >>> (1 << member);
    return;
  }
  const step = 1 << (member - MEMBERS_IN_WORD);
  for (let at = 0; at < sets.length; at++) if ((at & step) === 0) sets[at]! |= sets[at + step]!;
}

/** Hitting sets none of which stays one when a member is taken away. */
function minimalOf(misses: Uint32Array, width: number): number[] {
  const found: number[] = [];
  for (let at = 0; at < misses.length; at++) {
    let minimal = ~misses[at]!;
    for (let member = 0; member < width && minimal !== 0; member++) minimal &= ~hitsWithout(misses, at, member);
    for (let bit = 0; minimal !== 0 && bit < 32; bit++) if (minimal & (1 << bit)) found.push(at * 32 + bit);
  }
  return found;
}

/** Of the 32 subsets in a word, those that hold the member and still hit every edge without it. */
function hitsWithout(misses: Uint32Array, at: number, member: number): number {
  if (member < MEMBERS_IN_WORD) return (~misses[at]! & ~HOLDS[member]!) << (1 << member);
  const step = 1 << (member - MEMBERS_IN_WORD);
  return (at & step) === 0 ? 0 : ~misses[at - step]!;
}

function membersOf(subset: number, members: number): number[] {
  const found: number[] = [];
  for (let member = 0; member < members; member++) if (subset & (1 << member)) found.push(member);
  return found;
}

function compareLists(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((member, place) => member !== b[place]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}
