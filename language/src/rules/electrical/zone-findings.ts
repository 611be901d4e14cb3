import type { Finding, Related } from '../../core/finding.js';
import type { Span } from '../../core/span.js';
import type { AssembledFitting } from '../../assembly/fittings.js';
import type { ZoneProblem } from '../../engines/electrical/index.js';
import { isKind, showBlock, type Block } from '../../model/block.js';
import { zoneScopeLine } from '../../rule-sets/index.js';
import type { RuleInput } from '../rule.js';

export interface ZonedFitting { readonly fitting: AssembledFitting; readonly name: string; readonly light?: Block<'light'> }

/** The fitting of that name with its block; `name` as messages have it: `light lamp`. */
export function zonedFitting({ results }: RuleInput, name: string): ZonedFitting | undefined {
    const fitting = results.fittings.find(candidate => candidate.name === name && candidate.isElectrical);
    return fitting && { fitting, name: showBlock(fitting.block), ...(isKind(fitting.block, 'light') && { light: fitting.block }) };
}

export function* zoneFindings<K extends ZoneProblem['kind']>(input: RuleInput, kind: K, make: (problem: Extract<ZoneProblem, { readonly kind: K }>, found: ZonedFitting) => Omit<Finding, 'citation'>): Generator<Finding> {
    for (const problem of input.results.zones?.problems ?? []) {
        if (problem.kind !== kind) continue;
        const found = zonedFitting(input, problem.name);
        if (found) yield { citation: problem.citation, related: scope(input), ...make(problem as Extract<ZoneProblem, { readonly kind: K }>, found) };
    }
}

/** The standard's own limit of scope goes with every finding about the zones. */
export const scope = ({ job }: RuleInput): readonly Related[] => {
    const rules = job.block.values.rules;
    return rules ? [{ at: rules.span, message: zoneScopeLine }] : [];
};

export const ratingPlace = ({ light, fitting }: ZonedFitting): Span => (light?.values.rating ?? light?.values.model)?.span ?? fitting.block.head;
export const lightModelPlace = ({ light, fitting }: ZonedFitting): Span => light?.values.model?.span ?? fitting.block.head;
/** Where it stands along its wall. */
export function wallPlace({ fitting: { block } }: ZonedFitting): Span {
    const { from, centre } = block.values as Block<'light'>['values'];
    return (from ?? centre)?.span ?? block.head;
}
