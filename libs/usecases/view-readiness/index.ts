export * from './view-readiness';
