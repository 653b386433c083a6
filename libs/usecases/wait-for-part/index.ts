export * from './wait-for-part';
export * from './take-spare-back';
