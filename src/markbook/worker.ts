import { readAssignmentText } from '../delivery/assignment/readAssignment.ts';
import { FileMarker, type MarkedFile } from '../delivery/book/markFile.ts';
import type { Collected } from '../delivery/collection/collected.ts';

/** What the page asks of a worker: first what to mark by, then file after file. */
export type MarkRequest =
  | { ask: 'begin'; assignment: string; secretSeed: number }
  | { ask: 'mark'; id: number; file: Collected };
export interface MarkReply {
  id: number;
  marked: MarkedFile;
}

let marker: FileMarker | null = null;

self.onmessage = ({ data }: MessageEvent<MarkRequest>) => {
  if (data.ask === 'begin') {
    const read = readAssignmentText(data.assignment);
    if (!read.ok) throw new Error(read.refusal.found);
    marker = new FileMarker(read.value, data.secretSeed);
    return;
  }
  const reply: MarkReply = { id: data.id, marked: marker!.mark(data.file) };
  self.postMessage(reply);
};
