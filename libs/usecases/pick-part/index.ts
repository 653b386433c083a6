export * from './pick-part';
export * from './return-part';
