/** Whether the API was asked to end: then it answers what is under way, and wants nothing new. */
export class Ending {
  private asked = false;

  begin(): void {
    this.asked = true;
  }

  get begun(): boolean {
    return this.asked;
  }
}
