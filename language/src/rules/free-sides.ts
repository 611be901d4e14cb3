import type { Job } from '../model/job.js';

/**
 * Whether the site was read whole and names no side that stands free. Every side then counts as built in, and what follows from that has one
 * cause: `free-sides-not-stated` tells it, and the rules that look at closed sides keep silent.
 */
export const areFreeSidesUnstated = ({ site }: Job): boolean => site?.isWhole === true && !site.written.has('free');
