import type { Results } from '../assembly/results.js';
import type { Job } from '../model/job.js';
import { airFacts } from './air-facts.js';
import { benchFacts } from './bench-facts.js';
import { circuitFacts } from './circuit-facts.js';
import type { FactProvider } from './facts-tree.js';
import { heaterFacts } from './heater-facts.js';
import { openingFacts } from './opening-facts.js';
import { roomFacts } from './room-facts.js';

/** Publishes the results of all engines as facts. Names are unique in a job; when two things share one, the first keeps its paths. */
export function publishFacts(job: Job, results: Results): readonly FactProvider[] {
    const all = [...roomFacts(job, results), ...openingFacts(job, results), ...benchFacts(job, results), ...heaterFacts(job, results), ...circuitFacts(job, results), ...airFacts(job, results)];
    const seen = new Set<string>();
    return all.filter(({ path }) => !seen.has(path) && seen.add(path));
}
