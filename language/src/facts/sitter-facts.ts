import { fitOf, sittersIn } from '../assembly/sitters.js';
import type { Results } from '../assembly/results.js';
import { showLength, showList } from '../core/show.js';
import type { Governing } from '../engines/access/ergonomics.js';
import type { Job } from '../model/job.js';
import { bodyCitation, bodyMeasures, showPerson } from '../rule-sets/anthropometry.js';
import { lengthFact, wordsFact } from './fact.js';
import type { FactProvider } from './facts-tree.js';

/** `room.sitter.…`: body measures of those the room is to fit. */
export function sitterFacts(job: Job): readonly FactProvider[] {
    if (!job.room) return [];
    const { fits } = job.room.values;
    const fact = (name: string, title: string, of: () => Governing): FactProvider => lengthFact(`room.sitter.${name}`, title, () => of().length, () => {
        const { measure, person } = of();
        return { because: [fits], how: `${bodyMeasures[measure]}, ${showPerson(person)}, undressed and barefoot`, source: bodyCitation(measure, person) };
    });
    return [
        fact('height', 'sitting height of the largest meant', () => sittersIn(job).height), fact('lower_leg', 'sole to hollow of the knee of the smallest meant', () => sittersIn(job).lowerLeg),
        fact('thigh', 'back to hollow of the knee of the smallest meant', () => sittersIn(job).thigh), fact('knees', 'back to knee of the largest meant', () => sittersIn(job).knees),
        fact('elbows', 'breadth at the elbows of the largest meant', () => sittersIn(job).elbows),
    ];
}

/** `⟨bench⟩.fit`: what of those people does not fit on it. */
export function fitFacts(job: Job, results: Results): readonly FactProvider[] {
    return (results.benches?.result.benches ?? []).map(bench => wordsFact(`${bench.name}.fit`, 'how it fits those who are to sit on it', () => {
        const fit = fitOf(bench, job, results);
        if (!fit) return undefined;
        const show = (length: typeof fit.headShort): string => showLength(length, job.unit, 'drawing');
        const short = [
            ...(fit.headShort > 0 ? [`heads lack ${show(fit.headShort)}`] : []), ...(fit.feetShort > 0 ? [`feet hang ${show(fit.feetShort)}`] : []),
            ...(fit.seatOver > 0 ? [`the seat is ${show(fit.seatOver)} deeper than thighs`] : []), ...(fit.seatsByElbows < fit.seats ? [`elbows leave ${fit.seatsByElbows} of ${fit.seats} seats`] : []),
            ...(fit.atKnees.length > 0 ? [`knees meet ${showList([...new Set(fit.atKnees.map(({ kind, name }) => kind === 'wall' ? `the ${name} wall` : name))])}`] : []),
        ];
        return short.length === 0 ? 'fits' : short.join('; ');
    }, () => {
        const { height, lowerLeg } = sittersIn(job);
        return { because: [results.benches?.blocks.get(bench.name)?.head, job.room?.values.fits], how: `for a ${showPerson(lowerLeg.person)} to a ${showPerson(height.person)}; wishes, not demands`, source: bodyCitation(height.measure, height.person) };
    }));
}
