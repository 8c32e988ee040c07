/** Where in an element, as shares of its width and height. */
export type Place = readonly [number, number];

/** One browser of one person, driven from outside. Nothing in it knows the app. */
export interface Engine {
  readonly name: string;
  /** Goes to an address as a tap on a link in a message does: a page of its own. */
  go(address: string): Promise<void>;
  reload(): Promise<void>;
  /** What an expression of JavaScript gives in the page, as JSON can carry it; it must not wait for anything. */
  read(expression: string): Promise<unknown>;
  /** Presses the element that an expression gives, as a finger would: in its middle, or where `at` says. */
  press(expression: string, at?: Place): Promise<void>;
  /** Types into the field that an expression gives, after what is there. */
  write(expression: string, text: string): Promise<void>;
  /** Gives a file to the file input that an expression gives. */
  put(expression: string, path: string): Promise<void>;
  /** The screen as it is seen, PNG. */
  picture(): Promise<Buffer>;
  /** Ends the browser with no warning. What its profile holds stays. */
  end(): Promise<void>;
}

/** Starts an engine on a profile folder. */
export type Start = (profile: string) => Promise<Engine>;

/** A common phone. */
export const SCREEN = { width: 390, height: 844 };
