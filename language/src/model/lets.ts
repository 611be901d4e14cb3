import type { Value } from '../core/value.js';
import * as ast from '../syntax/generated/ast.js';
import { evaluateOrWord } from './evaluate.js';
import type { NameFound, Names } from './names.js';
import { keySpan } from './places.js';
import type { Reading } from './reading.js';

/** One `let`: a name and the expression behind `=`. */
export interface Let { readonly fact: ast.Fact; readonly name: ast.Word; readonly expression: ast.Expr | undefined }

/** The `let`s that stand directly among some facts. */
export function letsIn(facts: readonly ast.Fact[]): readonly Let[] {
    return facts.flatMap((fact): Let[] => {
        if (fact.key !== 'let' || fact.braced) return [];
        const name = fact.phrases[0]?.terms[0];
        return ast.isWord(name) && name.path.length === 0 ? [{ fact, name, expression: fact.phrases[1]?.terms[0] }] : [];
    });
}

/** Reports how the `let`s among some facts are written. */
export function reportLets(facts: readonly ast.Fact[], reading: Reading, damaged: (fact: ast.Fact) => boolean): void {
    const seen = new Map<string, Let>();
    for (const fact of facts) {
        if (fact.key !== 'let' || fact.braced || damaged(fact)) continue;
        const [one] = letsIn([fact]);
        const [name, value] = fact.phrases;
        const extra = name?.terms[1] ?? value?.terms[1] ?? fact.phrases[2]?.terms[0];
        if (!one) reading.report('name-missing', name?.terms[0] ?? keySpan(fact, reading), 'A name stands behind let, such as let aisle = 24".');
        else if (extra) reading.report('part-not-expected', extra, `‘${reading.textOf(extra)}’ does not belong here. A let is written let ${one.name.ref.$refText} = and one value.`);
        else if (!one.expression) reading.report('value-missing', fact, `${one.name.ref.$refText} has no value. Write let ${one.name.ref.$refText} = and its value.`);
        if (!one) continue;
        const first = seen.get(one.name.ref.$refText);
        if (first) reading.report('name-taken', one.name, `${one.name.ref.$refText} is given twice; one of the two has to go.`, { related: [{ at: reading.spanOf(first.name), message: 'It is given here first.' }] });
        else seen.set(one.name.ref.$refText, one);
    }
}

/** A `let` with the reading of the text it stands in. */
export interface PlacedLet { readonly item: Let; readonly reading: () => Reading }

/** Values of `let`s, each worked out when it is first asked for. */
export class LetValues {
    private readonly known = new Map<string, Value | undefined>();
    private readonly open: string[] = [];

    /**
     * @param lets by name; where several texts give one name, the last
     * @param asking does the work on behalf of the `let`, so that names asked for meanwhile are known to be asked by it
     */
    constructor(private readonly lets: ReadonlyMap<string, PlacedLet>, private readonly asking: <T>(owner: string, reading: Reading, at: ast.Word, work: () => T) => T, private readonly noteUse: (name: string) => void = () => undefined) {}

    get names(): readonly string[] { return [...this.lets.keys()]; }

    find(name: string): NameFound | undefined {
        const placed = this.lets.get(name);
        if (!placed) return undefined;
        this.noteUse(name);
        if (!this.known.has(name)) {
            const start = this.open.indexOf(name);
            if (start >= 0) {
                this.reportRing([...this.open.slice(start), name]);
                return { kind: 'waits' };
            }
            this.open.push(name);
            try {
                const reading = placed.reading();
                this.known.set(name, this.asking(name, reading, placed.item.name, () => evaluateOrWord(placed.item.expression, reading)));
            } finally {
                this.open.pop();
            }
        }
        const value = this.known.get(name);
        return value ? { kind: 'value', value } : { kind: 'waits' };
    }

    private reportRing(chain: readonly string[]): void {
        const [first] = chain;
        const placed = first === undefined ? undefined : this.lets.get(first);
        if (!placed) return;
        placed.reading().report('names-in-a-ring', placed.item.name, `${chain.join(' needs ')} again: none of them can be worked out first. Give one of them a figure.`);
    }
}

/** Names of one text: its `let`s and those of its file, then whatever else is in sight. */
export const namesOver = (lets: readonly LetValues[], others: Names): Names => ({
    find(path) {
        const [name] = path;
        if (path.length === 1 && name !== undefined) for (const values of lets) {
            const found = values.find(name);
            if (found) return found;
        }
        const found = others.find(path);
        return found.kind === 'unknown' ? { ...found, known: [...lets.flatMap(values => values.names), ...found.known] } : found;
    },
});
