export * from './move-stage';
