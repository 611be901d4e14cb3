import { spoken } from '../core/show.js';
import { lookUp } from '../facts/look-up.js';
import { showValue } from '../core/value.js';
import type { Block } from '../model/block.js';
import { endOf } from '../syntax/token-list.js';
import { blocksIn, definitionOf, isBlockKind, isJobLike, propertiesOf } from '../vocabulary/index.js';
import { statements, statementsIn } from '../vocabulary/statements.js';
import { baseBlocks } from './complete-header.js';
import { openFindings } from './complete-waive.js';
import { describeHeader, describeProperty } from './describe.js';
import { oneOf, plain, type Offer, type Sight } from './offer.js';
import type { RawScope, RawText } from './raw-facts.js';
import { padKey, sampleBlock, sampleValue } from './samples.js';
import type { Spot } from './spot.js';

type KeySpot = Extract<Spot, { kind: 'key' }>;

/** Facts, blocks and statements that can begin here: the facts the block still needs, then those it may have, then blocks, then the rest. */
export function completeKeys(raw: RawText, spot: KeySpot, offset: number, sight: Sight): Offer[] {
    const { scope, fact, current } = spot;
    const start = current?.startOffset ?? offset;
    const end = current ? endOf(current) : offset;
    const others = scope.facts.filter(other => other !== fact);
    const written = new Set(others.flatMap(other => other.key && !other.body ? propertiesOf(scope.kind).get(other.key.image)?.key ?? [] : []));
    const blocks = new Set(others.flatMap(other => other.key && isBlockKind(other.key.image) ? [other.key.image] : []));
    const isAlone = !fact || (fact.tokens.length === 1 && !fact.body);
    const isOwnLine = !/[^\s]/.test(raw.text.slice(raw.text.lastIndexOf('\n', start - 1) + 1, start));
    const at = { start, end };
    const offers: Offer[] = [];
    if (isBlockKind(scope.kind) && !(fact?.body)) {
        const before = overriddenBlock(scope, offset, sight);
        for (const [spelling, { key, property }] of propertiesOf(scope.kind)) {
            if (spelling !== key || written.has(key)) continue;
            const said = before && saidBefore(before.block, key, before);
            const value = said?.writable === undefined ? sampleValue(property, raw, scope, sight) : `\${1:${plain(said.writable)}}`;
            offers.push({
                ...at, label: key, kind: 'fact', order: said ? 0 : property.isRequired && !before ? 0 : 1, isSnippet: isAlone,
                text: isAlone ? `${isOwnLine ? padKey(key) : `${key} `}${value}` : key,
                detail: before && said ? `${said.shown} in ${before.from}` : property.type.words, doc: `${property.doc}\n\n${describeProperty(property)}`,
            });
        }
    }
    for (const kind of blocksIn(scope.kind)) {
        const definition = definitionOf(kind);
        if (blocks.has(kind) && !definition.isRepeatable) continue;
        offers.push({
            ...at, label: kind, kind: 'block', order: 2, isSnippet: isAlone, text: isAlone ? sampleBlock(kind, raw, scope, sight) : kind,
            detail: describeHeader(kind), doc: definition.doc,
        });
    }
    if (isAlone && isJobLike(scope.kind)) for (const { kind, name } of baseBlocks(offset, sight, scope)) if (name) offers.push({
        ...at, label: `${kind} ${name.value}`, kind: 'block', order: 3, isSnippet: true, text: `${kind} ${name.value} {\n\t$0\n}`, detail: 'says something of it otherwise', doc: `What ${spoken(kind)} ${name.value} was said to be stays, but for what you write here.`,
    });
    return fact?.body ? offers : [...offers, ...statementOffers(scope, isAlone, at, offset, sight)];
}

function statementOffers(scope: RawScope, isAlone: boolean, at: { readonly start: number; readonly end: number }, offset: number, sight: Sight): Offer[] {
    return statementsIn(scope.kind).flatMap((name): Offer[] => {
        const statement = statements[name];
        if (!statement) return [];
        const paths = name === 'use' ? sight.paths() : [];
        const findings = name === 'waive' ? [...new Set(openFindings(sight.job?.(offset)).map(({ rule }) => rule))] : [];
        const snippet = paths.length > 0 ? `use "${oneOf(1, paths)}"`
            : name === 'waive' ? `waive ${findings.length > 0 ? oneOf(1, findings) : '${1:finding}'} because "\${2:reason}" by "\${3:who}" until \${4:2027-01-31}`
            : name === 'let' ? 'let ${1:name} = ${2:1}' : statement.snippet;
        return [{ ...at, label: name, kind: 'fact', order: name === 'use' ? 0 : 4, isSnippet: isAlone, text: isAlone ? snippet : name, detail: name === 'use' ? 'a path in quotes' : statement.written, doc: statement.doc }];
    });
}

interface Before { readonly block: Block; readonly head: string; readonly from: string; readonly sight: ReturnType<NonNullable<Sight['job']>> }
/** The block of a series, or of the job a variant is of, that a block speaks of. */
function overriddenBlock(scope: RawScope, offset: number, sight: Sight): Before | undefined {
    const { parent, header } = scope;
    if (!parent || !header || !isJobLike(parent.kind)) return undefined;
    const [, second] = header.tokens;
    const isNamed = isBlockKind(scope.kind) && definitionOf(scope.kind).isRepeatable;
    const others = baseBlocksOf(parent, offset, sight);
    const block = others.blocks.find(one => one.kind === scope.kind && (isNamed ? one.name !== undefined && one.name.value === second?.image : true));
    return block && { block, head: block.name?.value ?? block.kind, from: others.from, sight: sight.job?.(offset) };
}
function baseBlocksOf(scope: RawScope, offset: number, sight: Sight): { readonly blocks: readonly Block[]; readonly from: string } {
    const alone: RawScope = { ...scope, facts: [] };
    const names = baseBlocks(offset, sight, alone);
    const header = scope.kind === 'variant' ? scope.parent?.header : scope.header;
    const series = scope.header?.tokens.find((_, i, all) => all[i - 1]?.image === 'is')?.image;
    const nameless = scope.kind === 'variant' ? sight.job?.(scope.parent?.header?.start ?? offset)?.analysis.job.block.children : series === undefined ? [] : sight.series?.(series)?.children;
    return { blocks: [...names, ...(nameless ?? []).filter(({ name }) => !name)], from: scope.kind === 'variant' ? header?.tokens[1]?.image ?? 'the job' : series ?? '' };
}

/** What was said of a fact before, as it can be written again where that is plain. */
function saidBefore({ values }: Block, key: string, { head, sight }: Before): { readonly shown: string; readonly writable: string | undefined } | undefined {
    if (!Object.keys(values).includes(key)) return undefined;
    const found = sight && lookUp(sight.analysis.job, sight.analysis.facts, [head, key]);
    if (found?.kind !== 'value') return { shown: 'given', writable: undefined };
    const shown = showValue(found.value, sight?.analysis.job.unit ?? 'in');
    // A place has its wall before its distance and so is more than its value.
    const isPlace = ['from', 'centre'].includes(key);
    const isPlain = !isPlace && (found.value.kind === 'quantity' || found.value.kind === 'word' || found.value.kind === 'flag' || found.value.kind === 'text') && !shown.startsWith('≈');
    return { shown, writable: isPlain ? shown : undefined };
}
