import type { Results } from '../assembly/results.js';
import type { Job } from '../model/job.js';
import type { FactProvider } from './facts-tree.js';

/** Publishes the results of all engines as facts. */
export function publishFacts(_job: Job, _results: Results): FactProvider[] {
    return [];
}
