export * from './actor';
export * from './clock';
export * from './outcome';
export * from './ports/index';
export * from './run';
export * from './rulebook';
export * from './judge-installs';
export * from './sign-in/index';
