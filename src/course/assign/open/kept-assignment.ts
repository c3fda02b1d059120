/** An assignment that was opened in this browser, so that it can be gone on with. */
export interface KeptAssignment {
  id: string;
  title: string;
  /** As it was given: signed or plain. */
  text: string;
  /** Thumbprint of who signed it; null where nobody did. */
  signedBy: string | null;
}
