import { spoken } from '../core/show.js';
import { AstUtils } from 'langium';
import type { Span } from '../core/span.js';
import { baseTermOf, nameOf, textOf, type BaseTerm } from '../syntax/words.js';
import * as ast from '../syntax/generated/ast.js';
import { readArguments, wordsAmong, type Arguments } from './arguments.js';
import type { Block } from './block.js';
import type { ComputedNames } from './computed-names.js';
import type { DocumentText } from './document-text.js';
import type { JobDefaults } from './job-defaults.js';
import { toJob, type Job } from './job.js';
import type { Layer, LoweringContext } from './layers.js';
import { LetValues, namesOver, reportLets, type PlacedLet } from './lets.js';
import { lowerBlock } from './lower.js';
import type { Names } from './names.js';
import type { LanguageFinding, Reading } from './reading.js';
import { withUnfinished } from './unfinished-names.js';
import { readWaivers } from './waivers.js';

/** What a job's text needs from the file it stands in and from other files. */
export interface JobSurroundings {
    readonly textOf: (fact: ast.Fact) => DocumentText;
    /** The block a fact of any file became in its own file. */
    readonly blockOf: (fact: ast.Fact) => Block | undefined;
    /** What the file of a fact is told of its own text. */
    readonly findingsOf: (fact: ast.Fact) => readonly LanguageFinding[];
    /** The fact of a kind that a name means, seen from a word. */
    readonly factNamed: (word: ast.Word, name: string) => ast.Fact | undefined;
    /** The layers of a catalogue entry made from another. */
    readonly entryLayers: (fact: ast.Fact) => readonly Layer[] | 'unknown';
    /** Reports names nothing answers to, once a name. */
    readonly unknownNames: () => { readonly add: (word: ast.Word, kinds: readonly string[]) => void; readonly report: (reading: Reading) => void };
}

export interface LoweredJob {
    readonly job: Job;
    /** What the job's own text can see: its `let`s, the values of its series, and everything given and computed. */
    readonly names: Names;
    readonly findings: readonly LanguageFinding[];
}

/** One text of a job: what it is made from, itself, a variant of it. */
interface JobText {
    readonly fact: ast.Fact;
    readonly text: DocumentText;
    /** How the text below it is called by this one. */
    readonly base?: BaseTerm;
}

/**
 * A job as written, or one variant of it. It is lowered anew as more becomes known: first without anything computed, then with what was computed
 * from that, until nothing changes.
 */
export class JobSource {
    readonly fact: ast.Fact;

    constructor(fact: ast.Fact, private readonly around: JobSurroundings, readonly variant?: ast.Fact, private readonly defaults: JobDefaults = {}) {
        this.fact = fact;
    }

    /** The same job in a project that says what holds where the job says nothing. */
    withDefaults(defaults: JobDefaults): JobSource { return new JobSource(this.fact, this.around, this.variant, defaults); }

    lower(computed: ComputedNames): LoweredJob {
        const { texts, ring } = this.texts();
        const own = texts.length - 1;
        const blocks = new Map<ast.Fact, Block>();
        const unknown = this.around.unknownNames();
        const parameters: (Arguments | undefined)[] = texts.map(() => undefined);
        const readings: Reading[] = [];
        const lets = new LetValues(
            new Map(texts.flatMap(({ fact, text }, i): [string, PlacedLet][] => [...text.letsAmong(fact.body, () => readings[i] ?? text.reading())])),
            (owner, reading, at, work) => computed.asking(owner, reading.spanOf(at), work), name => { computed.noteLet(name); });
        for (const [i, { fact, text }] of texts.entries()) {
            const fileLets: LetValues = text.fileLets(() => ofFile);
            const ofFile = text.reading(namesOver([fileLets], computed), true);
            const among = [...texts.slice(0, i + 1).map(({ fact, text: its }) => ({ facts: fact.body, damaged: its.damaged })), { facts: text.items, damaged: text.damaged }];
            const isOpen = texts.some(({ fact, base }) => base ? base.word.ref.ref === undefined : fact.phrases[0]?.terms.some(term => ast.isCall(term) || (ast.isWord(term) && term.ref.$refText === 'is')) === true);
            readings.push(text.reading(withUnfinished(namesOver([lets], parameterNames(parameters, texts, i, namesOver([fileLets], computed))), among, isOpen), i !== own && fact.key !== 'series'));
        }
        const reading = readings[own] as Reading;
        for (let i = own; i > 0; i--) {
            const [above, below] = [texts[i], texts[i - 1]];
            const series = below && this.around.blockOf(below.fact);
            const its = readings[i];
            if (above?.base && series && its) parameters[i - 1] = computed.asking(`${nameOf(above.fact) ?? above.fact.key}’s values`, its.spanOf(above.base.term), () => readArguments(above.base as BaseTerm, series, its, above.text.isBrokenIn((above.base as BaseTerm).term)));
        }
        if (ring) reading.report('made-from-itself', ring.at, ring.message);
        // A series reports its own mistakes in its own file; a name this job gave it is reported here.
        const unknownInBase = (i: number): LoweringContext['unknownName'] => (word, kinds) => {
            const value = parameters[i]?.get(word.ref.$refText);
            const at = texts.findLast(({ base }) => base)?.base?.term;
            if (value?.kind === 'word' && at) reading.report('unknown-name', at, `There is no ${kinds.map(spoken).join(' or ')} called ${value.word}; the series takes one for ${word.ref.$refText}. Name one of a catalogue this file uses.`);
        };
        const layers = texts.map(({ fact, text }, i): Layer => ({ fact, context: this.contextFor(text, readings[i] as Reading, blocks, computed, i === own ? unknown.add : unknownInBase(i)) }));
        const base = texts.find(({ fact, base }) => base && fact === this.fact)?.base;
        if (base && !base.word.ref.ref) unknown.add(base.word, ['series']);
        // What it is made from has its own message when it is not there, and may have said what the job does not.
        const isUnmade = ring !== undefined || (base !== undefined && !base.word.ref.ref);
        const block = lowerBlock(layers as [Layer, ...Layer[]], 'job', { as: 'job', isPartial: isUnmade, ...(this.defaults.rules && { defaults: { rules: this.defaults.rules } }) }) as Block<'job'>;
        const ownText = texts[own] as JobText;
        reportLets(ownText.fact.body, reading, fact => ownText.text.isDamaged(fact));
        for (const { fact, text } of texts) for (const name of text.letsAmong(fact.body, () => reading).keys()) lets.find(name);
        const waivers = texts.flatMap(({ fact, text }, i) => fact.key === 'series' ? [] : readWaivers(fact.body, readings[i] as Reading, one => text.isDamaged(one)));
        unknown.report(reading);
        this.reportOfSeries(texts, readings, reading);
        const named = this.variant ? this.named(block) : block;
        const job = toJob(isUnmade ? { ...named, isWhole: false } : named, waivers, this.defaults.units);
        return { job: this.variant ? { ...job, variant: { name: nameOf(this.variant) ?? 'variant' } } : job, names: reading.names, findings: reading.findings };
    }

    /**
     * What only shows in a job made from a series: a fact that is missing although the job does not give it, a name that means nothing in this job, a value
     * that comes out wrong. It stands where the job says what it is made from. What the series' own file tells already is not told again.
     */
    private reportOfSeries(texts: readonly JobText[], readings: readonly Reading[], own: Reading): void {
        const term = texts.findLast(({ base }) => base)?.base?.term;
        if (!term) return;
        for (const [i, { fact }] of texts.entries()) {
            if (fact.key !== 'series' || readings[i] === own) continue;
            const told = this.around.findingsOf(fact);
            for (const { rule, at, message, related = [] } of readings[i]?.findings ?? []) {
                if (told.some(other => other.rule === rule && other.at.start === at.start && other.at.end === at.end)) continue;
                own.report(rule, own.spanOf(term), message, { origin: at, related: [{ at, message: `It is written here, in series ${nameOf(fact) ?? ''}.` }, ...related] });
            }
        }
    }

    /** A variant goes by the name of its job and its own. */
    private named(block: Block<'job'>): Block<'job'> {
        const own = nameOf(this.fact);
        const term = this.fact.phrases[0]?.terms.find(ast.isText);
        const title = term && textOf(term);
        const value = [own, nameOf(this.variant as ast.Fact)].filter(Boolean).join('-');
        const isOwnTitle = title === undefined || block.title === undefined || title === block.title.value;
        return {
            ...block, ...(block.name && { name: { ...block.name, value } }),
            ...(block.title && { title: isOwnTitle ? block.title : { ...block.title, value: `${title}, ${block.title.value}` } }),
        };
    }

    /** The texts from the first series to the job or its variant; a series made from itself ends the row. */
    private texts(): { readonly texts: readonly JobText[]; readonly ring?: { readonly at: Span; readonly message: string } } {
        const texts: JobText[] = [];
        const seen = new Set<ast.Fact>();
        let ring: { at: Span; message: string } | undefined;
        let fact: ast.Fact | undefined = this.fact;
        while (fact) {
            if (seen.has(fact)) {
                const first = baseTermOf(this.fact);
                const names = [...seen].slice([...seen].indexOf(fact)).map(one => nameOf(one) ?? one.key);
                const text = this.around.textOf(this.fact);
                if (first) ring = { at: text.reading().spanOf(first.term), message: `${[...names, nameOf(fact)].join(' is ')}: made from itself, it has no beginning. Give one of them its own facts.` };
                break;
            }
            seen.add(fact);
            const base = baseTermOf(fact);
            texts.unshift({ fact, text: this.around.textOf(fact), ...(base && { base }) });
            fact = base?.word.ref.ref;
        }
        if (this.variant) texts.push({ fact: this.variant, text: this.around.textOf(this.variant) });
        return { texts, ...(ring && { ring }) };
    }

    private contextFor(text: DocumentText, reading: Reading, blocks: Map<ast.Fact, Block>, computed: ComputedNames, unknownName: LoweringContext['unknownName']): LoweringContext {
        return {
            reading, damaged: text.damaged, unknownName,
            resolve: (word, _kinds, name) => {
                const target = name === undefined ? word.ref.ref : this.around.factNamed(word, name) ?? this.factFromJob(name);
                if (!target) return 'unknown';
                return () => blocks.get(target) ?? (AstUtils.getContainerOfType(target, isJobFact) ? undefined : this.around.blockOf(target));
            },
            remember: (fact, block) => { blocks.set(fact, block); },
            baseOf: fact => this.around.entryLayers(fact),
            asking: (owner, at, work) => computed.asking(owner, at, work),
            missed: owner => { computed.missed.add(owner); },
        };
    }
    /** A name a series was given may stand in a catalogue only the job's own file uses. */
    private factFromJob(name: string): ast.Fact | undefined {
        const base = baseTermOf(this.fact);
        return base ? this.around.factNamed(base.word, name) : undefined;
    }
}

const isJobFact = (node: unknown): node is ast.Fact => typeof node === 'object' && node !== null && 'key' in node && (node.key === 'job' || node.key === 'series');

/** Parameters a text can see: its own and those of what it is made from. */
const parameterNames = (parameters: readonly (Arguments | undefined)[], texts: readonly JobText[], index: number, others: Names): Names => ({
    find(path) {
        const [name] = path;
        if (path.length === 1 && name !== undefined) for (let i = index; i >= 0; i--) {
            const values = parameters[i];
            if (!values?.has(name)) continue;
            const value = values.get(name);
            const series = texts[i];
            const among = series && wordsAmong(series.fact.body, name, fact => series.text.isDamaged(fact));
            return { ...(value ? { kind: 'value', value } : { kind: 'waits' }), ...(among && { among }) };
        }
        const found = others.find(path);
        return found.kind === 'unknown' ? { ...found, known: [...parameters.slice(0, index + 1).flatMap(values => [...values?.keys() ?? []]), ...found.known] } : found;
    },
});
