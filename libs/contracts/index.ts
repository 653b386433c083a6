export * from './common';
export * from './session';
export * from './catalogue';
export * from './unit';
export * from './ruling';
export * from './ticket';
export * from './bulletin';
export * from './callback';
