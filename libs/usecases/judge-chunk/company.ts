/** Lets work go on side by side, except for some that wants to be alone. All begin in the order in which they came. */
export class Company {
  private lastAlone: Promise<unknown> = Promise.resolve();
  private readonly beside = new Set<Promise<unknown>>();

  /** The work's own result. Alone, it begins when all that came before has ended, and all that comes later waits for it. */
  join<T>(work: () => Promise<T>, { alone }: { readonly alone: boolean }): Promise<T> {
    const before = alone ? Promise.all([this.lastAlone, ...this.beside]) : this.lastAlone;
    const result = before.then(work);
    const ended = result.then(
      () => undefined,
      () => undefined,
    );
    if (alone) this.lastAlone = ended;
    else {
      this.beside.add(ended);
      void ended.then(() => this.beside.delete(ended));
    }
    return result;
  }
}
