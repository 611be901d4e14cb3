import { isWall } from '../core/geometry.js';
import { letsIn } from '../model/lets.js';
import * as ast from '../syntax/generated/ast.js';
import { baseTermOf, nameOf, nameWord, wordsOf } from '../syntax/words.js';
import { blocksIn, derivesFrom, isBlockKind, isJobLike, propertiesOf } from '../vocabulary/index.js';
import type { Property } from '../vocabulary/block.js';
import { catalogueScope, fileScope, jobScope, joinsOf, partIn, ruleScope, valueIn, type NameScope } from './name-scopes.js';
import { allSharedNamed, isPart, layersOf, layersOfPart, offsetOf, placeKey, rulesIn, sharedNamed, type NameLibrary, type TextLayer } from './name-texts.js';

export type NameKind = 'job' | 'catalogue' | 'series' | 'entry' | 'variant' | 'rule' | 'parameter' | 'let' | 'block';

/** One place where a name is written. Places of one `key` mean one thing. */
export interface NameOccurrence {
    readonly start: number;
    readonly end: number;
    readonly name: string;
    readonly key: string;
    readonly kind: NameKind;
    /** What is said of it there: `override` gives more of what another text declares. */
    readonly role: 'declaration' | 'override' | 'use';
    /** The fact that declares it there, or the one the use stands in. */
    readonly fact: ast.Fact;
}

/** A word that leads somewhere and is no name: the property at the end of a path, or a fact that wins over others. */
export interface NameStep {
    readonly start: number;
    readonly end: number;
    readonly leadsTo: readonly TextLayer[];
    readonly why: 'path' | 'wins-over';
}

export interface DocumentNames {
    readonly uri: string;
    /** In the order of the text. */
    readonly occurrences: readonly NameOccurrence[];
    /** Pairs of keys that mean one thing. */
    readonly joins: readonly (readonly [string, string])[];
    readonly steps: readonly NameStep[];
}

/** Every name of a file, with what it means by the scoping rules of the language. Reads trees only, and of other files only what is looked up. */
export function namesIn(uri: string, root: ast.File, library: NameLibrary): DocumentNames {
    const walk = new Walk(uri, root, library);
    walk.file();
    const inOrder = <T extends { readonly start: number }>(items: T[]): readonly T[] => items.sort((a, b) => a.start - b.start);
    return { uri, occurrences: inOrder(walk.occurrences), joins: walk.joins, steps: inOrder(walk.steps) };
}

class Walk {
    readonly occurrences: NameOccurrence[] = [];
    readonly joins: (readonly [string, string])[] = [];
    readonly steps: NameStep[] = [];
    private fact: ast.Fact | undefined;

    constructor(private readonly uri: string, private readonly root: ast.File, private readonly library: NameLibrary) {}

    file(): void {
        const top = fileScope(this.library, this.uri);
        for (const item of this.root.items) {
            this.fact = item;
            if (item.key === 'let') this.let(item, undefined, top);
            else if (item.key === 'rule') this.rule(item, top);
            else if (item.key === 'catalogue') this.catalogue(item);
            else if (isJobLike(item.key)) this.jobLike(layersOf(this.library, item, this.uri), item.key as NameKind);
        }
    }

    private jobLike(layers: readonly TextLayer[], kind: NameKind): void {
        const own = layers.at(-1);
        if (!own) return;
        const { fact } = own;
        const scope = jobScope(this.library, layers);
        this.declare(fact, placeKey(own), kind);
        this.joins.push(...joinsOf(this.library, layers));
        const base = baseTermOf(fact);
        if (base) {
            this.shared(base.word, ['series']);
            for (const argument of base.args) this.argument(argument, layers, scope);
        }
        this.body(layers, scope);
        for (const variant of fact.body) if (variant.key === 'variant') this.jobLike([...layers, { fact: variant, uri: this.uri }], 'variant');
    }

    /** A value a series is given; one by name leads to the parameter. */
    private argument(argument: ast.Expr, layers: readonly TextLayer[], scope: NameScope): void {
        const below = layers.slice(0, -1);
        if (!ast.isComparison(argument) || argument.operator !== '=' || !ast.isWord(argument.left) || argument.left.path.length > 0) { this.expression(argument, scope); return; }
        const { left } = argument;
        const parameter = below.some(({ fact }) => fact.body.some(item => item.key === 'parameter' && nameOf(item) === left.ref.$refText)) ? valueIn(this.library, below, left.ref.$refText) : undefined;
        if (parameter) this.use(left, parameter.key, parameter.kind);
        this.expression(argument.right, scope);
    }

    private catalogue(fact: ast.Fact): void {
        const layer = { fact, uri: this.uri };
        const scope = catalogueScope(this.library, layer);
        this.declare(fact, placeKey(layer), 'catalogue');
        for (const item of fact.body) {
            this.fact = item;
            if (item.key === 'let') this.let(item, [layer], scope);
            else if (item.key === 'rule') this.rule(item, scope);
            else if (isBlockKind(item.key)) {
                const layers = layersOf(this.library, item, this.uri);
                this.declare(item, placeKey({ fact: item, uri: this.uri }), 'entry');
                this.header(item, scope);
                this.body(layers, scope);
            }
        }
    }

    private rule(fact: ast.Fact, outer: NameScope): void {
        const [each] = fact.body.find(({ key }) => key === 'each')?.phrases[0]?.terms ?? [];
        this.declare(fact, placeKey({ fact, uri: this.uri }), 'rule');
        this.body([{ fact, uri: this.uri }], ruleScope(outer, this.uri, ast.isWord(each) ? each.ref.$refText : undefined));
    }

    private let(fact: ast.Fact, layers: readonly TextLayer[] | undefined, scope: NameScope): void {
        const [one] = letsIn([fact]);
        const meaning = one && scope.value(one.name.ref.$refText);
        if (!one) return;
        const isFirst = !layers?.slice(0, -1).length || meaning?.key.startsWith(placeKey(layers.at(-1) as TextLayer));
        if (meaning) this.push(one.name, one.name.ref.$refText, 0, meaning.key, meaning.kind, isFirst ? 'declaration' : 'override', fact);
        if (one.expression) this.expression(one.expression, scope);
    }

    /** The header of a block behind its name: what it is made from, the walls it stands on. */
    private header(fact: ast.Fact, scope: NameScope): void {
        const base = baseTermOf(fact);
        if (base) this.shared(base.word, [derivesFrom(fact.key) ?? fact.key]);
        const terms = fact.phrases.map(phrase => phrase.terms as readonly ast.Expr[]);
        const on = terms[0]?.findIndex(term => ast.isWord(term) && term.ref.$refText === 'on' && term !== nameWord(fact)) ?? -1;
        if (on < 0) return;
        for (const term of [...terms[0]?.slice(on + 1) ?? [], ...terms.slice(1).flat()]) this.choice(term, isWall, scope);
    }

    /** The facts of the last text of a block. */
    private body(layers: readonly TextLayer[], scope: NameScope): void {
        const own = layers.at(-1)?.fact;
        if (!own) return;
        const known = propertiesOf(own.key);
        for (const item of own.body) {
            this.fact = item;
            const property = known.get(item.key);
            if (property && !item.braced) {
                this.winsOver(item, property.key, layers);
                this.value(item, property.property, scope);
            } else if (item.key === 'let') this.let(item, layers, scope);
            else if (item.key === 'waive') this.waive(item, scope);
            else if (item.key === 'parameter' && own.key === 'series') this.parameter(item, layers, scope);
            else if (isPart(own, item) && isBlockKind(item.key) && blocksIn(own.key).includes(item.key)) {
                const name = nameOf(item);
                const meaning = name === undefined ? undefined : partIn(layers, name);
                if (meaning) this.declare(item, meaning.key, 'block', meaning.layers[0]?.fact === item ? 'declaration' : 'override');
                this.header(item, scope);
                this.body(layersOfPart(layers, item), scope);
            }
        }
    }

    private parameter(fact: ast.Fact, layers: readonly TextLayer[], scope: NameScope): void {
        const meaning = valueIn(this.library, layers, nameOf(fact) ?? '');
        if (meaning) this.declare(fact, meaning.key, meaning.kind, meaning.key.startsWith(placeKey(layers.at(-1) as TextLayer)) ? 'declaration' : 'override');
        this.body([{ fact, uri: this.uri }], scope);
    }

    /** A fact that a lower text states too. */
    private winsOver(item: ast.Fact, key: string, layers: readonly TextLayer[]): void {
        const start = offsetOf(item);
        const beaten = layers.slice(0, -1).flatMap(({ fact, uri }) => fact.body.filter(other => !other.braced && propertiesOf(fact.key).get(other.key)?.key === key).map(other => ({ fact: other, uri })));
        if (start >= 0 && beaten.length > 0) this.steps.push({ start, end: start + item.key.length, leadsTo: beaten.toReversed(), why: 'wins-over' });
    }

    private waive(fact: ast.Fact, scope: NameScope): void {
        const terms: readonly (ast.Expr | undefined)[] = fact.phrases[0]?.terms ?? [];
        const [rule] = terms;
        if (ast.isWord(rule)) {
            const name = rule.ref.$refText;
            for (const uri of this.library.visible(this.uri)) {
                const root = this.library.root(uri);
                const found = root && rulesIn(root).find(one => nameOf(one) === name);
                if (found) { this.use(rule, placeKey({ fact: found, uri }), 'rule'); break; }
            }
        }
        for (let i = 1; i + 1 < terms.length; i += 2) {
            const [word, value] = [terms[i], terms[i + 1]];
            if (ast.isWord(word) && word.ref.$refText === 'on' && ast.isWord(value)) this.word(value, scope);
        }
    }

    private value(fact: ast.Fact, { type }: Property, scope: NameScope): void {
        for (const { terms } of fact.phrases) {
            const [first, ...rest] = terms as readonly ast.Expr[];
            if (!first) continue;
            switch (type.kind) {
                case 'text': case 'date': break;
                case 'price': case 'tariff': case 'density': this.expression(first, scope); break;
                case 'reference': case 'references': case 'layer':
                    this.reference(first, type.refersTo ?? [], scope);
                    for (const term of rest) this.expression(term, scope);
                    break;
                case 'choice': case 'choices': case 'flag': case 'walls': this.choice(first, word => type.choices?.includes(word) === true, scope); break;
                case 'place': case 'wall-lengths': this.choice(first, isWall, scope); for (const term of rest) this.expression(term, scope); break;
                case 'centre-place': if (rest[0]) this.choice(rest[0], isWall, scope); for (const term of rest.slice(1)) this.expression(term, scope); break;
                case 'supply': case 'supplies': this.expression(first, scope); if (rest[0]) this.choice(rest[0], word => word === 'single_phase' || word === 'three_phase', scope); break;
                default: for (const term of [first, ...rest]) this.expression(term, scope);
            }
        }
    }

    /** A term that may be one of some words, which are no names then. */
    private choice(term: ast.Expr, isOwn: (word: string) => boolean, scope: NameScope): void {
        if (ast.isWord(term)) { if (term.path.length > 0 || !isOwn(term.ref.$refText)) this.word(term, scope); }
        else if (ast.isChoice(term)) { this.expression(term.condition, scope); this.choice(term.yes, isOwn, scope); this.choice(term.no, isOwn, scope); }
        else if (ast.isGroup(term)) this.choice(term.inner, isOwn, scope);
        else this.expression(term, scope);
    }

    /** A name of a block of some kinds: of the job, else of a catalogue in sight, else whatever else the word may be. */
    private reference(term: ast.Expr, kinds: readonly string[], scope: NameScope): void {
        const words = new Set(wordsOf(term));
        this.expression(term, scope, word => {
            if (!words.has(word) || word.path.length > 0) return false;
            const part = scope.part(word.ref.$refText);
            if (part && kinds.includes(part.layers[0]?.fact.key ?? '')) { this.use(word, part.key, 'block'); return true; }
            return this.shared(word, kinds);
        });
    }
    private shared(word: ast.Word, kinds: readonly string[]): boolean {
        const found = sharedNamed(this.library, this.uri, word.ref.$refText, kinds);
        if (found) this.use(word, placeKey(found), found.fact.key === 'series' ? 'series' : 'entry');
        return found !== undefined;
    }

    /** Every name in an expression; `before` may take a word for itself. */
    private expression(term: ast.Expr | undefined, scope: NameScope, before: (word: ast.Word) => boolean = () => false): void {
        const visit = (one: ast.Expr | undefined): void => {
            if (!one) return;
            switch (one.$type) {
                case 'Word': if (!before(one)) this.word(one, scope); break;
                case 'Group': visit(one.inner); break;
                case 'Negative': visit(one.operand); break;
                case 'Binary': case 'Comparison': case 'Logic': visit(one.left); visit(one.right); break;
                case 'Choice': visit(one.condition); visit(one.yes); visit(one.no); break;
                case 'Call': one.args.forEach(visit); break;
                case 'Size': visit(one.width); visit(one.height); break;
                case 'Range': visit(one.from); visit(one.to); break;
                case 'Literal': case 'Text': case 'DateLiteral': break;
                default: one satisfies never;
            }
        };
        visit(term);
    }

    private word(word: ast.Word, scope: NameScope): void {
        const name = word.ref.$refText;
        if (word.path.length === 0) {
            const value = scope.value(name);
            if (value) { this.use(word, value.key, value.kind); return; }
        }
        const part = name === scope.each ? undefined : scope.part(name);
        if (part) {
            this.use(word, part.key, 'block');
            this.path(word, [part.layers], scope);
        } else if (isBlockKind(name)) this.path(word, scope.ofKind(name), scope);
        else if (word.path.length > 0 || !this.anyShared(word)) this.use(word, scope.free(name), 'block');
    }
    private anyShared(word: ast.Word): boolean {
        const found = allSharedNamed(this.library, this.uri, word.ref.$refText).at(-1);
        if (found) this.use(word, placeKey(found), found.fact.key === 'series' ? 'series' : 'entry');
        return found !== undefined;
    }

    /** The words of a path behind the first: blocks within blocks, properties, and what a property refers to. */
    private path(word: ast.Word, start: readonly (readonly TextLayer[])[], scope: NameScope): void {
        let offset = (word.$cstNode?.offset ?? 0) + word.ref.$refText.length;
        let groups = start;
        const text = word.$cstNode?.text ?? '';
        for (const segment of word.path) {
            const at = text.indexOf(segment, offset - (word.$cstNode?.offset ?? 0));
            if (at < 0) return;
            offset = (word.$cstNode?.offset ?? 0) + at;
            const inner = groups.flatMap(layers => partIn(layers, segment) ?? []);
            const [first] = inner;
            if (first) this.push(word, segment, offset - (word.$cstNode?.offset ?? 0), first.key, 'block', 'use', this.fact);
            const facts = first ? [] : groups.flatMap(layers => layers.flatMap(({ fact, uri }) => fact.body.filter(item => !item.braced && propertiesOf(fact.key).get(item.key)?.key === propertiesOf(layers[0]?.fact.key ?? '').get(segment)?.key).map(item => ({ fact: item, uri }))).slice(-1));
            if (facts.length > 0) this.steps.push({ start: offset, end: offset + segment.length, leadsTo: facts, why: 'path' });
            offset += segment.length;
            groups = first ? inner.map(({ layers }) => layers) : facts.flatMap(layer => this.referredBy(layer, scope));
        }
    }
    /** The texts of the block a fact refers to. */
    private referredBy({ fact, uri }: TextLayer, scope: NameScope): readonly (readonly TextLayer[])[] {
        const parent = fact.$container;
        const kinds = ast.isFact(parent) ? propertiesOf(parent.key).get(fact.key)?.property.type.refersTo : undefined;
        const [term] = fact.phrases[0]?.terms ?? [];
        if (!kinds || !ast.isWord(term)) return [];
        const part = scope.part(term.ref.$refText);
        if (part && kinds.includes(part.layers[0]?.fact.key ?? '')) return [part.layers];
        const found = sharedNamed(this.library, uri, term.ref.$refText, kinds);
        return found ? [layersOf(this.library, found.fact, found.uri)] : [];
    }

    private declare(fact: ast.Fact, key: string, kind: NameKind, role: 'declaration' | 'override' = 'declaration'): void {
        const word = nameWord(fact);
        if (word) this.push(word, word.ref.$refText, 0, key, kind, role, fact);
    }
    private use(word: ast.Word, key: string, kind: NameKind): void { this.push(word, word.ref.$refText, 0, key, kind, 'use', this.fact); }
    private push(word: ast.Word, name: string, shift: number, key: string, kind: NameKind, role: NameOccurrence['role'], fact: ast.Fact | undefined): void {
        const at = word.$cstNode;
        if (!at || !fact || name === '' || at.length === 0) return;
        const start = at.offset + shift;
        this.occurrences.push({ start, end: start + name.length, name, key, kind, role, fact });
    }
}

