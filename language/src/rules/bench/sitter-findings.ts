import { fitOf, sittersIn } from '../../assembly/sitters.js';
import { showCitation, type Citation } from '../../core/citation.js';
import type { Related } from '../../core/finding.js';
import type { BenchFit, Governing, Sitters } from '../../engines/access/ergonomics.js';
import { bodyCitation, bodyMeasures, showPerson } from '../../rule-sets/anthropometry.js';
import { showRequired } from '../governing.js';
import type { RuleInput } from '../rule.js';
import { areAllPlaced, placedBenches, type PlacedBenchBlock } from './bench-findings.js';

/** A bench with the people it is to fit. Nothing while the job names nobody: these are wishes, and only asked for. */
export function* judgedFits(input: RuleInput): Generator<PlacedBenchBlock & { readonly fit: BenchFit; readonly sitters: Sitters }> {
    const { job, results } = input;
    if (!job.room?.values.fits || !areAllPlaced(input)) return;
    const sitters = sittersIn(job);
    for (const bench of placedBenches(input)) {
        const fit = fitOf(bench.layout, job, results);
        if (fit) yield { ...bench, fit, sitters };
    }
}

export const cited = ({ measure, person }: Governing): Citation => bodyCitation(measure, person);
/** `sitting height of a 95th percentile man, 38 15/32" (ANSUR II 2012)`. */
export const showMeasure = (found: Governing, { job }: RuleInput, bound: 'least' | 'most' = 'least'): string =>
    `${showRequired(found.length, job.unit, bound)} (${bodyMeasures[found.measure]} of a ${showPerson(found.person)}, ${showCitation(cited(found)).split(',')[0] ?? ''})`;

export const whereMeant = ({ job }: RuleInput): readonly Related[] => job.room?.values.fits ? [{ at: job.room.values.fits.span, message: 'The people it is to fit are named here.' }] : [];
