/**
 * A repair shop of our own invention, made from a seed: for a first look, for screenshots, for tests that need a shop
 * of real size. No maker, part or person in it exists.
 *
 *   makeDemoShop(seed, today): DemoShop      the whole shop as plain data
 *   KEPT_BULLETIN                            key of the bulletin that is kept for a new user to publish
 *   demoRulebookFile(shop): RulebookDocument the rulebook alone, in the versioned file format of libs/contracts
 */
export type * from './demo-shop';
export { makeDemoShop } from './make-demo-shop';
export { KEPT_BULLETIN } from './rulebook/drafts';
export { makeChance, type Chance } from './prng';
export { demoRulebookFile } from './rulebook-file';
export { people as demoPeople } from './shop/people';
