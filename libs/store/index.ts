export * from './embedded';
export * from './migrate';
export { openStore, type OpenStore, type StoreOptions } from './open-store';
export { actingAs, type Acting } from './audit/acting';
export { verifyTrail, type TrailFault, type TrailReport } from './audit/verify-trail';
export { hashPassword, passwords, PasswordsBusyError } from './people/passwords';
export * from './seed';
export { seedIfEmpty } from './seed';
