import { showCitation } from '../core/citation.js';
import type { LengthUnit } from '../core/show.js';
import { magnitude, sameFigure, showFigure } from './figure.js';
import { clauseKeys, type ClauseKey, type Sense } from './keys.js';
import type { Clause, Condition, RuleSet } from './rule-set.js';

/** A clause and the set that brought it. */
export interface FromSet<K extends ClauseKey = ClauseKey> {
    readonly ruleSet: RuleSet;
    readonly clause: Clause<K>;
}

/**
 * Two demands that do not say the same and cannot both be met by the governing one: `edition` when an older text differs, `practice` when
 * common practice aims elsewhere than a published clause, `disagreement` when published clauses name different things, `decided` when the job has chosen.
 */
export interface Conflict<K extends ClauseKey = ClauseKey> {
    readonly kind: 'edition' | 'practice' | 'disagreement' | 'decided';
    readonly governing: FromSet<K>;
    readonly other: FromSet<K>;
}

export interface Governing<K extends ClauseKey = ClauseKey> extends FromSet<K> {
    readonly key: K;
    readonly figure: Clause<K>['figure'];
    /** Every other clause of the key, in the order of the sets, superseded ones last. */
    readonly others: readonly FromSet<K>[];
    readonly conflicts: readonly Conflict<K>[];
}

/** All clauses of a key in the order of the sets. */
export function clausesOf<K extends ClauseKey>(ruleSets: readonly RuleSet[], key: K): readonly FromSet<K>[] {
    return ruleSets.flatMap(ruleSet => ruleSet.clauses
        .filter((candidate): candidate is Extract<typeof candidate, { readonly key: K }> => candidate.key === key)
        // The key decides the figure's type, so a clause found by its key is a Clause of that key.
        .map(found => ({ ruleSet, clause: found as unknown as Clause<K> })));
}

/**
 * The figure that governs when several rule sets apply: what the job has chosen where texts disagree, else the strictest current published clause; common practice only where none speaks.
 * Equal figures go to the set named first.
 * @param ruleSets the sets of the job, in the order they are named
 * @param options `without`: conditions the job does not meet; clauses that depend on one of them are left out
 * @returns the governing clause, the others, and every conflict; `undefined` when no set speaks about the key
 */
export function strictest<K extends ClauseKey>(
    ruleSets: readonly RuleSet[], key: K, { without = [] }: { readonly without?: readonly Condition[] } = {},
): Governing<K> | undefined {
    const all = clausesOf(ruleSets, key).filter(({ clause: { when } }) => when === undefined || !without.includes(when));
    const current = all.filter(({ clause }) => !clause.isSuperseded && !clause.isSetAside);
    const decided = all.filter(({ clause }) => clause.isChosen);
    const published = current.filter(isPublished);
    const certain = published.filter(({ clause }) => !clause.isUncertain);
    const candidates = decided.length > 0 ? decided : certain.length > 0 ? certain : published.length > 0 ? published : current;
    let governing = candidates[0];
    if (!governing) return undefined;
    for (const candidate of candidates) if (isStricter(candidate.clause, governing.clause)) governing = candidate;
    const chosen = governing;
    const rest = all.filter(item => item !== chosen);
    const others = [...rest.filter(({ clause }) => !clause.isSuperseded), ...rest.filter(({ clause }) => clause.isSuperseded)];
    const conflicts = others.flatMap((other): Conflict<K>[] => {
        if (isMetBy(other.clause, chosen.clause)) return [];
        const kind = other.clause.isSetAside ? 'decided' : other.clause.isSuperseded ? 'edition' : isPublished(other) === isPublished(chosen) ? 'disagreement' : 'practice';
        return [{ kind, governing: chosen, other }];
    });
    return { key, figure: chosen.clause.figure, ...chosen, others, conflicts };
}

/** The conflict as one sentence, lengths in `unit`. */
export function showConflict({ kind, governing, other }: Conflict, unit: LengthUnit = 'in'): string {
    const says = ({ clause }: FromSet): string => `${showFigure(clause.figure, unit)} (${showCitation(clause.citation)})`;
    const title = capital(clauseKeys[governing.clause.key].title);
    switch (kind) {
        case 'edition': return `${title}: ${says(governing)} governs; an older text has ${says(other)}.`;
        case 'decided': return `${title}: the job follows ${says(governing)} and sets ${says(other)} aside.`;
        case 'practice': return `${title}: ${says(governing)} governs; ${says(other)} yields to it.`;
        case 'disagreement': return `${title}: ${says(governing)} and ${says(other)} disagree; the local authority decides.`;
    }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const isPublished = ({ clause }: FromSet): boolean => clause.citation.kind === 'standard';
const senseOf = (clause: Clause): Sense => clause.sense ?? clauseKeys[clause.key].sense;

function isStricter(a: Clause, b: Clause): boolean {
    const [first, second] = [magnitude(a.figure), magnitude(b.figure)];
    if (first === undefined || second === undefined || sameFigure(a.figure, b.figure)) return false;
    const sense = clauseKeys[a.key].sense;
    return sense === 'minimum' ? first > second : sense === 'maximum' ? first < second : false;
}

/** Whether keeping to the governing clause keeps the other one too. */
function isMetBy(other: Clause, governing: Clause): boolean {
    if (sameFigure(other.figure, governing.figure)) return true;
    if (other.isSuperseded) return false;
    const [wanted, kept] = [magnitude(other.figure), magnitude(governing.figure)];
    if (wanted === undefined || kept === undefined) return false;
    switch (senseOf(other)) {
        case 'minimum': return kept >= wanted;
        case 'maximum': return kept <= wanted;
        case 'target': case 'choice': case 'requirement': return false;
    }
}
