export * from './tell-part';
