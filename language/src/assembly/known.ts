import { walls, type Wall } from '../core/geometry.js';
import type { Job } from '../model/job.js';

/**
 * Sides of the room that stand clear of the building. A site that could not be read whole and shows no such fact may well have one: then every
 * side counts as free, so that nobody complains of what could merely not be read.
 */
export function freeSides(job: Job): readonly Wall[] {
    const { site } = job;
    return site?.values.free?.value ?? (site && !site.isWhole ? walls : []);
}

/** Whether the rule sets of the job are known; a job whose line `rules` could not be read is not judged as if it had none. */
export const areRulesKnown = (job: Job): boolean => job.block.values.rules !== undefined || job.block.isWhole;
