export * from './mail-in-force';
export * from './settle-mail-server';
export * from './try-mail';
