export * from './shelf-is-kept';
export * from './take-from-shelf';
export * from './picks-changed';
export * from './wake-waiting';
