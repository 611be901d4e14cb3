import { walls, type Wall } from '../core/geometry.js';
import type { Job } from '../model/job.js';

/**
 * Sides of the room that stand clear of the building. Without a site nothing is known of the building, and a site that could not be read whole may
 * well say more than it shows: then every side counts as free, so that nobody complains of what is not known.
 */
export function freeSides(job: Job): readonly Wall[] {
    const { site } = job;
    return site?.values.free?.value ?? (site?.isWhole ? [] : walls);
}

/** Whether the rule sets of the job are known; a job whose line `rules` could not be read is not judged as if it had none. */
export const areRulesKnown = (job: Job): boolean => job.block.values.rules !== undefined || job.block.isWhole;
