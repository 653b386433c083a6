export * from './parts-touched';
export * from './note-parts';
