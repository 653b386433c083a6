export * from './open-ticket';
