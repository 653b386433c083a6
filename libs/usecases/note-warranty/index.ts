export * from './set-warranty';
export * from './touched-places';
