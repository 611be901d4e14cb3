import type { Finding } from '../../core/finding.js';
import type { AssembledFitting } from '../../assembly/fittings.js';
import type { PlaceProblem } from '../../engines/fittings/wall-place.js';
import type { Length } from '../../core/length.js';
import type { Given } from '../../model/block.js';
import type { Place } from '../../vocabulary/values.js';
import type { RuleInput } from '../rule.js';
import { capital, thingWords } from './thing-findings.js';

/** How a sentence names a fitting: `The sensor`, `Light lamp`. A fitting is called by what it is. */
export function fittingWords({ name, block, thing }: AssembledFitting): string {
    const what = block.kind === 'fitting' ? thing?.kind ?? 'other' : block.kind;
    return capital(thingWords({ kind: what === 'sensor' || what === 'light' || what === 'thermometer' ? what : thing?.kind ?? 'other', name }));
}

/** Findings about the place problems of fittings, in the order of the kinds. */
export function* fittingFindings({ results }: RuleInput, make: (fitting: AssembledFitting, problem: PlaceProblem) => Finding | undefined): Generator<Finding> {
    for (const fitting of results.fittings) {
        for (const problem of fitting.problems) {
            const finding = make(fitting, problem);
            if (finding) yield finding;
        }
    }
}

/** The facts that place a fitting, whichever of them its kind of block has. */
export interface PlaceFacts { readonly from?: Given<Place>; readonly centre?: Given<Place>; readonly bottom?: Given<Length>; readonly height?: Given<Length>; readonly below_ceiling?: Given<Length> }
export const placeFacts = ({ block }: AssembledFitting): PlaceFacts => block.values;
