export { isEmpty, seedShop } from './seed-shop';
export { DEMO_SHOP } from './seed-house';
export { seedIfEmpty } from './seed-if-empty';
