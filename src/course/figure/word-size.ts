/** Size of the words in a drawing of this width, both in drawing units: a little under the text of a full column. */
export const wordSize = (width: number) => Math.round((width / 38.4) * 100) / 100;
