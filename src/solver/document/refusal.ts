/** Why a document cannot be used: where, what stood there, what was expected. Words only; never thrown. */
export interface Refusal {
  /** JSON Pointer (RFC 6901) into the document; '' is the whole of it. */
  place: string;
  found: string;
  expected: string;
}

export type Reading<T> = { ok: true; value: T } | { ok: false; refusal: Refusal };
