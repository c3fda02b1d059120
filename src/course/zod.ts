/** zod, told to make no code from text: pages allow none, and asking whether they do would be reported as a breach. */
import { z } from 'zod';

z.config({ jitless: true });

export { z };
