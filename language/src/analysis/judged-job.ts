import { applySeverities } from '../settings/apply-severities.js';
import type { ReportedFinding } from '../core/finding.js';
import type { ProjectSettings } from '../settings/settings.js';
import type { JobAnalysis } from './analyze-job.js';

/** A job under the settings of its project: its findings as the project wants them, everything else as it is. */
export class JudgedJob implements JobAnalysis {
    readonly findings: readonly ReportedFinding[];
    readonly leftOut: readonly ReportedFinding[];

    constructor(private readonly own: JobAnalysis, readonly settings: ProjectSettings) {
        ({ findings: this.findings, leftOut: this.leftOut } = applySeverities(own.findings, settings));
    }
    // Asked for one by one: a job that was kept works them out only when somebody looks.
    get job(): JobAnalysis['job'] { return this.own.job; }
    get results(): JobAnalysis['results'] { return this.own.results; }
    get facts(): JobAnalysis['facts'] { return this.own.facts; }
    get ruleSets(): JobAnalysis['ruleSets'] { return this.own.ruleSets; }
    get names(): JobAnalysis['names'] { return this.own.names; }
}
