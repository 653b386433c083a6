export { isEmpty, seedShop } from './seed-shop';
export { DEMO_SHOP } from './seed-house';
