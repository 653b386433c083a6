export { openPress } from './open-press';
