export * from './record-places';
