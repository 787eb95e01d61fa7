/** Counts the calls that it makes, where the watch of the main thread sees it, and keeps the slowest. */
export class Timed {
  readonly #begun: Int32Array;
  count = 0;
  slowest = { seconds: 0, name: '' };

  constructor(begun: Int32Array) {
    this.#begun = begun;
  }

  call<Answer>(name: string, call: () => Answer): Answer {
    const start = this.#begin();
    try {
      return call();
    } finally {
      this.#end(name, start);
    }
  }

  /** The same for an answer that is promised. */
  async promised<Answer>(name: string, call: () => Promise<Answer>): Promise<Answer> {
    const start = this.#begin();
    try {
      return await call();
    } finally {
      this.#end(name, start);
    }
  }

  #begin(): number {
    this.count += 1;
    Atomics.add(this.#begun, 0, 1);
    return performance.now();
  }

  #end(name: string, start: number): void {
    const seconds = (performance.now() - start) / 1000;
    if (seconds > this.slowest.seconds) this.slowest = { seconds, name };
  }

  toString(): string {
    const { seconds, name } = this.slowest;
    return `${this.count} calls, the slowest ${seconds.toFixed(2)} s (${name})`;
  }
}
