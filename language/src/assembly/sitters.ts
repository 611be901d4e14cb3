import { benchFit, sittersOf, type BenchFit, type Sitters } from '../engines/access/ergonomics.js';
import type { BenchLayout } from '../engines/benches/bench-result.js';
import type { Job } from '../model/job.js';
import type { Person } from '../rule-sets/anthropometry.js';
import type { Results } from './results.js';

/** Whom figures are given for where a job names nobody. */
const usual: readonly [Person, Person] = ['p5_woman', 'p95_man'];

/** The people a room is to fit, as its `fits` says. */
export function sittersIn(job: Job): Sitters {
    const [first, ...more] = job.room?.values.fits?.value ?? usual;
    return sittersOf(first ? [first, ...more] : usual);
}

export const fitOf = (bench: BenchLayout, job: Job, { things, inside }: Pick<Results, 'things' | 'inside'>): BenchFit | undefined => inside && benchFit(bench, sittersIn(job), things, inside);
