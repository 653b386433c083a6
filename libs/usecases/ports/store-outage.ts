/** The database is away, stopped or cut the connection: not the fault of what was asked, and worth asking again. */
export class StoreOutage extends Error {
  constructor(cause: unknown, message = 'the database is not to be reached') {
    super(message, { cause });
    this.name = new.target.name;
  }
}

/** Others changed the same all the while, until every try was spent: nothing was done, and it is worth asking again. */
export class StoreContended extends StoreOutage {
  constructor(cause: unknown) {
    super(cause, 'others kept changing the same');
  }
}
