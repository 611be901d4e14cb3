import type { ReportedFinding } from '../core/finding.js';
import { spanContains } from '../core/span.js';
import type { Job } from '../model/job.js';
import type { CsvField } from './csv.js';
import { jobName, type RenderedJob } from './rendered-job.js';

/** What ties a loose record to the job it was made from, and to the state that job was in. */
export interface JobTrace {
    readonly job: string;
    readonly number?: string;
    readonly revision?: string;
    /** Errors the job stood with when the record was made. */
    readonly errors: number;
}

/** First fields of every record of every file; a sheet cut in two still says what it is of. */
export const traceHeader = ['job', 'number', 'revision', 'errors'] as const;
export const traceFields = ({ job, number, revision, errors }: JobTrace): readonly CsvField[] => [job, number, revision, errors];

export function jobTrace({ job, findings }: Pick<RenderedJob, 'job' | 'findings'>): JobTrace {
    const { number, revision } = job.block.values;
    return {
        job: jobName(job), ...(number && { number: number.value }), ...(revision && { revision: revision.value }),
        errors: findings.filter(({ severity }) => severity === 'error').length,
    };
}

interface FileFindings<J extends JobFindings> { readonly jobs: readonly J[]; readonly findings: readonly ReportedFinding[] }
interface JobFindings { readonly job: Job; readonly findings: readonly ReportedFinding[] }

/**
 * A job with everything found that concerns it: what its rules say, and the mistakes of the text, except those of other jobs in the file.
 * A list made of it then counts the same errors wherever it is made.
 */
export function withTextFindings<J extends JobFindings>(own: J, { jobs, findings }: FileFindings<J>): J {
    const others = jobs.filter(job => job !== own);
    const found = findings.filter(finding => own.findings.includes(finding)
        || !others.some(other => other.findings.includes(finding) || spanContains(other.job.block.span, finding.at)));
    // Not copied: a job that was kept works its members out when they are asked for, and a copy would have none of them.
    return Object.create(own, { findings: { value: found, enumerable: true } }) as J;
}
