import type { Results } from '../assembly/results.js';
import type { Job } from '../model/job.js';
import { airFacts } from './air-facts.js';
import { benchFacts } from './bench-facts.js';
import { circuitFacts } from './circuit-facts.js';
import { fitFacts, sitterFacts } from './sitter-facts.js';
import { climateFacts } from './climate-facts.js';
import type { FactProvider } from './facts-tree.js';
import { heaterFacts } from './heater-facts.js';
import { openingFacts } from './opening-facts.js';
import { roomFacts } from './room-facts.js';
import { strengthFacts } from './strength-facts.js';
import { serviceFacts, slatFacts } from './service-facts.js';

/** Who publishes about which kinds of block. */
const groups: readonly { readonly kinds: readonly string[]; readonly facts: (job: Job, results: Results) => readonly FactProvider[] }[] = [
    { kinds: ['room', 'site'], facts: roomFacts }, { kinds: ['door', 'window'], facts: openingFacts }, { kinds: ['bench'], facts: benchFacts }, { kinds: ['room'], facts: sitterFacts }, { kinds: ['bench'], facts: fitFacts },
    { kinds: ['bench'], facts: strengthFacts },
    { kinds: ['heater'], facts: heaterFacts }, { kinds: ['heater', 'circuit'], facts: circuitFacts }, { kinds: ['vent', 'air'], facts: airFacts },
    { kinds: ['room', 'air', 'door', 'window'], facts: climateFacts }, { kinds: ['room', 'heater'], facts: serviceFacts }, { kinds: ['bench'], facts: slatFacts },
];

/** The facts about one kind of block alone, so that nothing is worked out that they do not need. */
export const publishFactsAbout = (kind: string, job: Job, results: Results): readonly FactProvider[] => groups.flatMap(({ kinds, facts }) => kinds.includes(kind) ? facts(job, results) : []);

/** Publishes the results of all engines as facts. Names are unique in a job; when two things share one, the first keeps its paths. */
export function publishFacts(job: Job, results: Results): readonly FactProvider[] {
    const all = groups.flatMap(({ facts }) => facts(job, results));
    const seen = new Set<string>();
    return all.filter(({ path }) => !seen.has(path) && seen.add(path));
}
