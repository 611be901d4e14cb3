import { showLength } from '../core/show.js';
import type { Results } from '../assembly/results.js';
import type { Job } from '../model/job.js';
import { ofQuantity } from '../core/value.js';
import { dimensions } from '../core/quantity.js';
import { amountFact, flagFact, lengthFact, wordFact, wordsFact } from './fact.js';
import type { FactProvider } from './facts-tree.js';
import { toNumber } from '../core/rational.js';
import { TICKS_PER_INCH, TICKS_PER_MM } from '../core/length.js';
import { isMetric, showNumber } from '../core/show.js';

/** `⟨bench⟩.…`: ledger heights, slats and gaps, spans, legs, cut length, comfort. */
export function benchFacts(job: Job, results: Results): readonly FactProvider[] {
    const show = (length: Parameters<typeof showLength>[0]): string => showLength(length, job.unit);
    const assembled = results.benches;
    if (!assembled) return [];
    return assembled.result.benches.flatMap((bench): FactProvider[] => {
        const block = assembled.blocks.get(bench.name);
        const { top, depth, build } = block?.values ?? {};
        const made = build?.value.block?.values;
        const { name, slats, comfort } = bench;
        return [
            lengthFact(`${name}.ledger.top`, 'ledger top', () => bench.ledgerTop, () => ({ because: [top, made?.slat, made?.bearer], how: `${show(bench.top)} less ${show(bench.buildUp)} of slat and cross-bearer, from the finished floor` })),
            lengthFact(`${name}.build_up`, 'slat and cross-bearer', () => bench.buildUp, () => ({ because: [made?.slat, made?.bearer] })),
            wordFact(`${name}.load_path`, 'load path', () => bench.loadPath, path => path === 'end_ledgers' ? 'end ledgers and rails' : 'back ledger and front legs', () => ({ because: [block?.values.load_path, made?.load_path] })),
            amountFact(`${name}.slats`, 'slats', '', () => slats?.count, () => ({ because: [depth, made?.slat, made?.slat_gap] })),
            wordsFact(`${name}.slat_gap`, 'gap between slats', () => slats && (isMetric(job.unit) ? `${showNumber(toNumber(slats.gap) / TICKS_PER_MM, 2)} mm` : `${showNumber(toNumber(slats.gap) / TICKS_PER_INCH, 4)}"`), () => ({ because: [depth, made?.slat, made?.slat_gap], exact: slats && ofQuantity({ value: slats.gap, dimension: dimensions.length, unit: 'in' }), how: slats && `${slats.count} slats flush at both edges, ${Math.max(0, slats.count - 1)} equal gaps` })),
            ...bench.runs.map((run, i) => lengthFact(i === 0 ? `${name}.length` : `${name}.length_${i + 1}`, `length on the ${run.wall} wall`, () => (run.u.to - run.u.from) as typeof bench.top, () => ({ because: [block?.values.length, job.room?.values.width, job.room?.values.depth] }))),
            ...bench.spans.map((span, i) => lengthFact(i === 0 ? `${name}.span.rail` : `${name}.span_${i + 1}.rail`, 'longest clear span of the front rail', () => span.frontRail, () => ({ because: [made?.leg_spacing] }))),
            amountFact(`${name}.legs`, 'legs', '', () => bench.legs.length, () => ({ because: [made?.leg_spacing, block?.values.load_path] })),
            lengthFact(`${name}.head_clearance`, 'bench top to ceiling lining', () => comfort.headClearance, () => ({ because: [top, job.room?.values.height], how: results.inside && `${show(results.inside.height)} inside less ${show(bench.top)}` })),
            lengthFact(`${name}.rise`, comfort.climbFrom === undefined ? 'climb from the floor' : `climb from ${comfort.climbFrom}`, () => comfort.rise, () => ({ because: [top] })),
            amountFact(`${name}.seats`, 'seats of 24"', '', () => comfort.seats, () => ({ because: [block?.values.length, job.room?.values.width], source: { kind: 'practice', text: '24" for each sitter' } })),
            amountFact(`${name}.lying_places`, 'places of 72" to lie', '', () => comfort.lyingPlaces, () => ({ because: [block?.values.length, job.room?.values.width], source: { kind: 'practice', text: '72" to lie' } })),
            flagFact(`${name}.is_highest`, 'whether no bench is higher', () => assembled.result.benches.every(other => other.top <= bench.top), () => ({ because: [top] })),
            amountFact(`${name}.pieces`, 'pieces', '', () => bench.parts.reduce((total, part) => total + part.count, 0), () => ({ because: [block?.head] })),
        ];
    });
}
