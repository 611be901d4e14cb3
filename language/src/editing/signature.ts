import { parametersOf } from '../model/arguments.js';
import { functions, isFunction } from '../model/functions.js';
import { derivesFrom } from '../vocabulary/index.js';
import type { Token } from '../syntax/token-list.js';
import { describeParameter } from './describe.js';
import { expressionPlace, type OpenBracket } from './expression-place.js';
import type { Sight } from './offer.js';
import { scopeAt, type RawText } from './raw-facts.js';
import { isMetricText } from './samples.js';
import { headerParts } from './spot.js';

/** How a call is written, with the value that is being written marked. */
export interface Signature {
    /** `cottage(w, side)`. */
    readonly label: string;
    readonly doc: string;
    /** Start and end of each parameter within the label. */
    readonly parameters: readonly { readonly start: number; readonly end: number; readonly doc: string }[];
    /** Index of the parameter the cursor is at; absent when there is no such parameter. */
    readonly active: number | undefined;
}

/** The call whose brackets a place stands in: a series that is being made use of, or a function. Works on tokens, so half-typed text is as good as whole. */
export function signatureAt(raw: RawText, offset: number, sight: Sight): Signature | undefined {
    const scope = scopeAt(raw.file, offset);
    const fact = scope.facts.find(one => one.start <= offset && offset <= one.end);
    if (!fact?.key || raw.comments.some(comment => comment.startOffset < offset && offset <= comment.startOffset + comment.image.length)) return undefined;
    const isHeader = derivesFrom(fact.key.image) !== undefined && headerParts(raw, fact).base !== undefined;
    const { base } = headerParts(raw, fact);
    const before = fact.tokens.slice(1).filter(token => token.startOffset < offset && (token.image === '(' || token.image === ',' || token.image === ')' || token.startOffset + token.image.length <= offset));
    const { levels } = expressionPlace(isHeader && base ? before.slice(Math.max(0, before.indexOf(base))) : before, raw.types);
    for (const { bracket } of [...levels].reverse()) {
        const name = bracket?.name;
        if (!bracket || !name) continue;
        if (isHeader && name === base) return seriesSignature(raw, bracket, name, sight);
        if (isFunction(name.image)) return functionSignature(name.image, bracket);
    }
    return undefined;
}

function seriesSignature(raw: RawText, bracket: OpenBracket, name: Token, sight: Sight): Signature | undefined {
    const series = sight.series?.(name.image);
    if (!series) return undefined;
    const parameters = parametersOf(series);
    const own = bracket.args.at(-1) ?? [];
    const byName = own[1]?.image === '=' ? own[0]?.image : undefined;
    // A value given by its name takes no place.
    const place = bracket.args.slice(0, -1).filter(arg => arg[1]?.image !== '=').length;
    const at = byName === undefined ? place : parameters.findIndex(one => one.name?.value === byName);
    const names = parameters.map(one => one.name?.value ?? '');
    return {
        ...labelled(name.image, names, parameters.map(({ values }, i) => describeParameter(names[i] ?? '', values, isMetricText(raw) ? 'mm' : 'in'))),
        doc: series.title?.value ?? '', active: at >= 0 && at < parameters.length ? at : undefined,
    };
}

function functionSignature(name: string, { args }: OpenBracket): Signature | undefined {
    const known = functions[name];
    if (!known) return undefined;
    const last = known.parameters.length - 1;
    const at = args.length - 1;
    return { ...labelled(name, known.parameters, known.parameters.map(() => '')), doc: known.doc, active: known.takesList ? Math.min(at, last) : at <= last ? at : undefined };
}

function labelled(name: string, parameters: readonly string[], docs: readonly string[]): Pick<Signature, 'label' | 'parameters'> {
    let label = `${name}(`;
    const places = parameters.map((parameter, i) => {
        const start = label.length + (i > 0 ? 2 : 0);
        label += `${i > 0 ? ', ' : ''}${parameter}`;
        return { start, end: label.length, doc: docs[i] ?? '' };
    });
    return { label: `${label})`, parameters: places };
}
