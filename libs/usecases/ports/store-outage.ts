/** The database is away, stopped or cut the connection: not the fault of what was asked, and worth asking again. */
export class StoreOutage extends Error {
  constructor(cause: unknown) {
    super('the database is not to be reached', { cause });
    this.name = 'StoreOutage';
  }
}
