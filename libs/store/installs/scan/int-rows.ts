/** Rows of whole numbers, kept by column; they grow by doubling. */
export class IntRows {
  length = 0;
  private room = 4_096;
  private readonly kept: Int32Array[];

  constructor(columns: number) {
    this.kept = Array.from({ length: columns }, () => new Int32Array(this.room));
  }

  push(row: Int32Array): void {
    if (this.length === this.room) this.grow();
    for (let c = 0; c < this.kept.length; c++) this.kept[c]![this.length] = row[c]!;
    this.length++;
  }

  /** The columns, each as long as there are rows. */
  columns(): readonly Int32Array[] {
    return this.kept.map((column) => column.subarray(0, this.length));
  }

  private grow(): void {
    this.room *= 2;
    for (let c = 0; c < this.kept.length; c++) {
      const larger = new Int32Array(this.room);
      larger.set(this.kept[c]!);
      this.kept[c] = larger;
    }
  }
}
