import type { ReportedFinding } from '../core/finding.js';
import type { Results } from '../assembly/results.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import type { RuleSet } from '../rule-sets/index.js';
import type { ProjectSettings } from '../settings/settings.js';

/** What a rendering reads of an analysed job; `analyze` gives jobs that have all of it. */
export interface RenderedJob {
    readonly job: Job;
    readonly results: Pick<Results, 'parts' | 'strength' | 'shell' | 'doors' | 'windows' | 'benches' | 'heaters' | 'fittings' | 'air'>;
    readonly ruleSets: readonly RuleSet[];
    readonly findings: readonly ReportedFinding[];
    /** The settings of its project, when there are some. */
    readonly settings?: ProjectSettings;
    /** What those turned off. */
    readonly leftOut?: readonly ReportedFinding[];
}

/** What the electrical schedule reads of an analysed job. */
export type ScheduledJob = Omit<RenderedJob, 'results'> & { readonly results: Pick<Results, 'circuits' | 'zones'> };

export const jobName = (job: Job): string => job.block.name?.value ?? 'job';

/** Whether every block of the job could be read; else a list made of it may lack parts. */
export const isReadWhole = (job: Job): boolean => isBlockWhole(job.block);
const isBlockWhole = (block: Block): boolean => block.isWhole && block.children.every(isBlockWhole);
