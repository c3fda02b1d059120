import { workerData } from 'node:worker_threads';
import { FileMarker } from '../../delivery/book/markFile.ts';
import type { Collected } from '../../delivery/collection/collected.ts';
import { readAssignmentFile } from '../assignments.ts';
import { serve } from '../serve.ts';

const { assignment, secretSeed } = workerData as { assignment: string; secretSeed: number };
const marker = new FileMarker(readAssignmentFile(assignment), secretSeed);
serve((file: Collected) => marker.mark(file));
