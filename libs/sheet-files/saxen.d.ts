/** The part of the XML parser that is used here; it brings no types. */
declare module 'saxen' {
  export class Parser {
    on(
      event: 'openTag',
      hear: (name: string, attributes: () => Record<string, string>, decode: (text: string) => string) => void,
    ): this;
    on(event: 'closeTag', hear: (name: string) => void): this;
    on(event: 'text', hear: (text: string, decode: (text: string) => string) => void): this;
    on(event: 'cdata', hear: (text: string) => void): this;
    on(event: 'error', hear: (error: Error) => void): this;
    write(piece: string): this;
    /** What was wrong, where the text ended too early. */
    end(): Error | undefined;
  }
}
