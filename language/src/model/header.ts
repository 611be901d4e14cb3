import { spoken } from '../core/show.js';
import type { AstNode } from 'langium';
import { isWall, walls as wallNames, type Wall } from '../core/geometry.js';
import { nearestName } from '../core/nearest.js';
import type { Sourced, Span } from '../core/span.js';
import * as ast from '../syntax/generated/ast.js';
import { baseTermOf, nameWord, textOf } from '../syntax/words.js';
import { definitionOf, derivesFrom, type BlockKind } from '../vocabulary/index.js';
import { chosenTerm, evaluateValue, wordText } from './evaluate.js';
import { showHeader } from './block-mistakes.js';
import { headSpan, keySpan } from './places.js';
import type { LoweringContext } from './layers.js';
import type { Reading } from './reading.js';

/** What one text of a block says in its header. */
export interface Header {
    readonly name?: Sourced<string>;
    readonly title?: Sourced<string>;
    readonly walls: readonly Sourced<Wall>[];
    readonly hasOn: boolean;
    readonly base?: Sourced<string>;
    readonly isWhole: boolean;
}

/** Reads a header. What a block of its kind must have and this text does not is not asked here: another layer may say it. */
export function readHeader(fact: ast.Fact, kind: BlockKind, { reading, asking }: LoweringContext, isDamaged: boolean): Header {
    const definition = definitionOf(kind);
    const phrases = fact.phrases.map(phrase => phrase.terms as readonly (ast.Expr | undefined)[]);
    const first = [...phrases[0] ?? []];
    const name = nameWord(fact);
    if (name) first.shift();
    const title = definition.hasTitle && ast.isText(first[0]) ? first.shift() : undefined;
    const base = baseTermOf(fact);
    const [is] = first;
    const walls: Sourced<Wall>[] = [];
    const found = { isComplained: false, waits: false };
    const complain = (rule: 'wall-missing' | 'part-not-expected' | 'value-missing', at: AstNode | Span, message: string, fixes: Parameters<Reading['report']>[3] = {}): void => {
        if (!found.isComplained && !isDamaged) reading.report(rule, at, message, fixes);
        found.isComplained = true;
    };
    if (base) first.splice(0, 2);
    else if (is && derivesFrom(kind) !== undefined && ast.isWord(is) && wordText(is) === 'is') {
        complain('value-missing', is, `The name of a ${spoken((derivesFrom(kind) ?? ''))} stands behind ‘is’.`);
        first.splice(0);
    }
    const [on] = first;
    const hasOn = on !== undefined && ast.isWord(on) && wordText(on) === 'on';
    if (hasOn && definition.walls === 'none') complain('part-not-expected', on, `A ${spoken(kind)} does not stand on a wall; remove ‘on’ and what follows.`);
    else if (hasOn) {
        for (const terms of [first.slice(1), ...phrases.slice(1)]) {
            const [wall, extra] = terms;
            if (!wall) { complain('wall-missing', on, 'A wall stands behind ‘on’: front, left, back or right.'); continue; }
            const word = asking(`${showHeader(fact)}’s wall`, reading.spanOf(wall), () => { const term = chosenTerm(wall, reading); return term ? wallWord(term, reading) : 'waits'; });
            if (word === 'waits') found.waits = true;
            else if (word === undefined || !isWall(word)) {
                const nearest = word === undefined ? undefined : nearestName(word, wallNames);
                complain('wall-missing', wall, `‘${reading.textOf(wall)}’ is no wall; the walls are front, left, back and right.${nearest ? ` Is ${nearest} meant?` : ''}`, nearest ? { fixes: [reading.replace(`Write ${nearest}`, wall, nearest)] } : {});
            } else if (extra) complain('part-not-expected', extra, `‘${reading.textOf(extra)}’ does not belong in this header. Walls are divided by commas.`);
            else if (walls.some(other => other.value === word)) complain('part-not-expected', wall, `The ${word} wall is named twice.`);
            else walls.push({ value: word, span: reading.spanOf(wall) });
        }
        if (walls.length > 1 && definition.walls !== 'several' && phrases[1]?.[0]) complain('part-not-expected', phrases[1][0], `A ${spoken(kind)} stands on one wall.`);
    } else if (on) complain('part-not-expected', on, headerExtra(on, kind, reading));
    else if (phrases[1]?.[0]) complain('part-not-expected', phrases[1][0], headerExtra(phrases[1][0], kind, reading));
    return {
        ...(name && { name: { value: name.ref.$refText, span: reading.spanOf(name) } }),
        ...(title && ast.isText(title) && { title: { value: textOf(title), span: reading.spanOf(title) } }),
        ...(base && { base: { value: base.word.ref.$refText, span: reading.spanOf(base.term) } }),
        walls, hasOn, isWhole: !found.isComplained && !found.waits,
    };
}

/** The wall a term names: itself, or what a parameter or `let` of that name holds. */
function wallWord(term: ast.Expr, reading: Reading): string | undefined {
    const own = ast.isWord(term) ? wordText(term) : undefined;
    if (own !== undefined && isWall(own)) return own;
    if (ast.isWord(term)) {
        const found = reading.names.find([term.ref.$refText, ...term.path]);
        return found.kind === 'waits' ? 'waits' : found.kind === 'value' && found.value.kind === 'word' ? found.value.word : own;
    }
    if (!ast.isCall(term)) return undefined;
    const value = evaluateValue(term, reading);
    return value === undefined ? 'waits' : value.kind === 'word' ? value.word : undefined;
}

/** Reports what the header of a whole block lacks. `whose` is the text that is asked to say it. */
export function reportHeader(fact: ast.Fact, kind: BlockKind, header: Pick<Header, 'name' | 'hasOn'>, reading: Reading): boolean {
    const definition = definitionOf(kind);
    if (!header.name && definition.name === 'required') {
        reading.report('name-missing', keySpan(fact, reading), `This ${spoken(kind)} has no name. Put one behind ${kind}.`);
        return true;
    }
    if (!header.hasOn && (definition.walls === 'one' || definition.walls === 'several')) {
        reading.report('wall-missing', headSpan(fact, reading), `${showHeader(fact)} needs its wall, such as ${showHeader(fact)} on back.`);
        return true;
    }
    return false;
}

function headerExtra(term: ast.Expr, kind: BlockKind, reading: Reading): string {
    const word = ast.isWord(term) ? wordText(term) : undefined;
    if (word !== undefined && isWall(word) && definitionOf(kind).walls !== 'none') return `The word ‘on’ is missing before the wall ${word}.`;
    return `‘${reading.textOf(term)}’ does not belong in the header of a ${spoken(kind)}.`;
}
