import { showCitation } from '../core/citation.js';
import { clauseKeys, type ClauseKey } from './keys.js';
import type { AnyClause, RuleSet } from './rule-set.js';
import { clausesOf, strictest, type FromSet } from './strictest.js';

/** What a job says where published texts, or a text and practice, want different things and no figure of the two is the stricter. */
export interface Decision {
    readonly about: ClauseKey;
    /** The text that is followed, by the beginning of its citation: `IMC 2018`, `common practice`. */
    readonly follows: string;
}

/** A key as one word of the language: `vent_opening_place`. */
export const keyWord = (key: string): string => key.replaceAll(/[.-]/g, '_');
/** The key of a word; `undefined` for a word that is none. */
export const keyOfWord = (word: string): ClauseKey | undefined => (Object.keys(clauseKeys) as ClauseKey[]).find(key => keyWord(key) === word);

const isFollowed = (follows: string, { citation }: Pick<AnyClause, 'citation'>): boolean => showCitation(citation).toLowerCase().startsWith(follows.trim().toLowerCase()) && follows.trim() !== '';

/** What the sets say about a key, each text once, in their order. */
export function textsAbout(ruleSets: readonly RuleSet[], about: ClauseKey): readonly FromSet[] {
    const found = clausesOf(ruleSets, about);
    return found.filter(({ clause }, at) => found.findIndex(other => showCitation(other.clause.citation) === showCitation(clause.citation)) === at);
}

export interface Settled {
    readonly followed: readonly FromSet[];
    readonly setAside: readonly FromSet[];
}
/** How a decision divides the clauses; nothing is followed when its text is none of the sets'. */
export function settlementOf(ruleSets: readonly RuleSet[], { about, follows }: Decision): Settled {
    const all = textsAbout(ruleSets, about);
    return { followed: all.filter(({ clause }) => isFollowed(follows, clause)), setAside: all.filter(({ clause }) => !isFollowed(follows, clause)) };
}

/** Whether a decision may hold: it follows a text there is, something is in dispute, and nothing that protects people from harm is set aside. */
export function mayBeDecided(ruleSets: readonly RuleSet[], decision: Decision): boolean {
    const { followed, setAside } = settlementOf(ruleSets, decision);
    return followed.length > 0 && !setAside.some(({ clause }) => clause.isNeverWaived) && (strictest(ruleSets, decision.about)?.conflicts.length ?? 0) > 0;
}

/** The rule sets as a job has decided between them: what it follows is marked as chosen, what it does not as set aside. A decision that may not hold changes nothing. */
export function decide(ruleSets: readonly RuleSet[], decisions: readonly Decision[]): readonly RuleSet[] {
    const held = decisions.filter(decision => mayBeDecided(ruleSets, decision));
    if (held.length === 0) return ruleSets;
    const marked = (clause: AnyClause): AnyClause => {
        const decision = held.find(({ about }) => about === clause.key);
        return !decision ? clause : isFollowed(decision.follows, clause) ? { ...clause, isChosen: true } : { ...clause, isSetAside: true };
    };
    return ruleSets.map(set => ({ ...set, clauses: set.clauses.map(marked) }));
}
