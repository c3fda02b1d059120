/** Files of a folder by name: a text as it is, anything else as JSON. */
export type Files = Readonly<Record<string, unknown>>;
