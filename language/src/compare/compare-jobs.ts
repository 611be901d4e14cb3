import type { Span } from '../core/span.js';
import { placeKey } from '../exports/export-job.js';
import type { ModelOfJob } from '../exports/job-models.js';
import type { Change } from './change.js';
import { compare } from './compare.js';

/** One job of a side, with the file it stands in as that side names it. */
export interface SideJob {
    /** Path from where the side begins, the same on both sides for the same file. */
    readonly file: string;
    readonly model: ModelOfJob;
    /** `jobs/birch.hotroom:12`, as a reader finds it. */
    readonly showPlace: (span: Span) => string;
    /** The same where the side is plain, without what the side is called. */
    readonly showPlaceInside?: (span: Span) => string;
}

/** A job that is on both sides, or on one only. Without changes when it means the same. */
export interface ComparedJob {
    readonly before?: SideJob;
    readonly after?: SideJob;
    readonly changes: readonly Change[];
}

export const nameOfJob = ({ model }: SideJob): string => model.model.job.name;

/**
 * Compares the jobs of two sides: those of one file and name, then those of one name whose file has moved, then the only job of each side.
 * @returns those of the later side in its order, then those that are gone
 */
export function compareJobs(before: readonly SideJob[], after: readonly SideJob[]): readonly ComparedJob[] {
    const open = new Set(before);
    const partner = new Map<SideJob, SideJob>();
    const pairAlike = (keyOf: (job: SideJob) => string): void => {
        const rest = after.filter(job => !partner.has(job));
        for (const job of rest) {
            const [alike, another] = [...open].filter(other => keyOf(other) === keyOf(job));
            if (!alike || another || rest.filter(other => keyOf(other) === keyOf(job)).length > 1) continue;
            partner.set(job, alike);
            open.delete(alike);
        }
    };
    pairAlike(job => JSON.stringify([job.file, nameOfJob(job)]));
    pairAlike(nameOfJob);
    if (before.length === 1 && after.length === 1) pairAlike(() => '');
    return [
        ...after.map((job): ComparedJob => {
            const old = partner.get(job);
            return old ? { before: old, after: job, changes: old.model.model === job.model.model ? [] : compare(old.model.model, job.model.model) } : { after: job, changes: [] };
        }),
        ...[...open].map((job): ComparedJob => ({ before: job, changes: [] })),
    ];
}

export const hasChanged = ({ before, after, changes }: ComparedJob): boolean => !before || !after || changes.length > 0;

/** Where the job begins. */
export const placeOfJob = ({ model }: SideJob): Span | undefined => model.places.get(placeKey('job', model.model.job.name));

/** The text that made a changed row on a side, when there is one: a piece leads to the block it belongs to, a stock to its catalogue entry. */
export function spanOfRow(change: Change, side: 'from' | 'to', job: SideJob): Span | undefined {
    const { places } = job.model;
    const { what, in: kind } = change;
    const row = change[side];
    if (!row) return undefined;
    const { key } = row;
    const block = places.get(placeKey('given', key.split('.')[0] ?? ''));
    switch (what) {
        case 'finding': case 'waiver': case 'panel': case 'part': case 'catalogue': return places.get(placeKey(what, key));
        case 'stock': return places.get(placeKey('catalogue', change[side]?.value.stock ?? ''));
        case 'given': return places.get(placeKey('given', key)) ?? block ?? (kind === 'job' ? placeOfJob(job) : undefined);
        case 'computed': return block;
        case 'rule-set': return places.get(placeKey('given', 'job.rules'));
        case 'job': return placeOfJob(job);
        default: return what satisfies never;
    }
}

/** Where a reader looks a changed row up on a side, when the text has a place for it. */
export function placeOfRow(change: Change, side: 'from' | 'to', job: SideJob): string | undefined {
    const at = spanOfRow(change, side, job);
    return at && job.showPlace(at);
}
