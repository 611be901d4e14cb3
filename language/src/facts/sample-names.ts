import { dimensions, type Dimension } from '../core/quantity.js';
import { rational } from '../core/rational.js';
import { ofFlag, ofList, ofQuantity, ofText, ofWord, type Value } from '../core/value.js';
import { walls } from '../core/geometry.js';
import { parts, wordsOf } from '../model/given-value.js';
import type { NameFound, Names } from '../model/names.js';
import { blocksIn, definitionOf, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import type { ValueKind } from '../vocabulary/values.js';
import { declaredUnder, findDeclared, wordsOfDeclared, type DeclaredFact } from './declared.js';

const one = (dimension: Dimension, unit = ''): Value => ofQuantity({ value: rational(1n), dimension, unit });
const figures: Readonly<Partial<Record<ValueKind | DeclaredFact['is'], Value>>> = {
    length: one(dimensions.length, 'in'), area: one(dimensions.area, 'ft2'), volume: one(dimensions.volume, 'ft3'), mass: one(dimensions.mass, 'lb'), power: one(dimensions.power, 'kW'),
    current: one(dimensions.current, 'A'), voltage: one(dimensions.voltage, 'V'), time: one(dimensions.time, 'min'), temperature: one(dimensions.temperature, 'degF'),
    number: one(dimensions.number), count: one(dimensions.number), percent: one(dimensions.number), density: one(dimensions.number), flag: ofFlag(true), holds: ofFlag(true),
    choice: ofWord('word'), text: ofText('text'), words: ofText('words'), lengths: ofList([one(dimensions.length, 'in')]), walls: ofList([ofWord('front')]), choices: ofList([ofWord('word')]),
    place: one(dimensions.length, 'in'), 'centre-place': one(dimensions.length, 'in'), reference: ofWord('name'), references: ofList([ofWord('name')]), date: { kind: 'date', date: '2026-01-01' },
};

const pieceValues: Readonly<Partial<Record<ValueKind, Value>>> = { size: one(dimensions.length, 'in'), 'length-range': one(dimensions.length, 'in'), 'volume-range': one(dimensions.volume, 'ft3'), layer: one(dimensions.length, 'in'), 'wall-lengths': one(dimensions.length, 'in') };

const supplyPieces: Readonly<Record<string, Value>> = { volts: one(dimensions.voltage, 'V'), phases: ofWord('single_phase') };

/**
 * Names as any job could have them, each with a value of the right kind: a house rule can be read with them before there is a job, so that a name that
 * does not exist or a sum of unlike things is told at the rule's own text.
 */
export const sampleNames = (each: string | undefined): Names => ({
    find([first, ...rest]): NameFound {
        if (first === undefined) return { kind: 'unknown', known: [] };
        if (isBlockKind(first) && !blocksIn('job').includes(first)) return { kind: 'unknown', known: [...blocksIn('job'), 'air'] };
        if (!isBlockKind(first)) {
            if (first === 'air') return underKind('air', rest);
            // The name of one block of some job, such as upper.
            return rest.length > 0 ? { kind: 'waits' } : { kind: 'unknown', known: [...blocksIn('job'), 'air', ...each === undefined ? [] : [...propertiesOf(each).keys(), ...declaredUnder(each)].map(key => `${each}.${key}`)] };
        }
        const found = underKind(first, rest);
        const isList = first !== each && definitionOf(first).isRepeatable;
        return found.kind === 'value' && isList ? { ...found, value: ofList([found.value]) } : found;
    },
});

function underKind(kind: string, path: readonly string[]): NameFound {
    const [key, ...rest] = path;
    if (rest.length === 0 && key === 'wall') return { kind: 'value', value: ofWord('front'), among: walls };
    if (key === undefined || (rest.length === 0 && key === 'name')) return { kind: 'value', value: ofWord('front') };
    if (isBlockKind(kind) && isBlockKind(key) && blocksIn(kind).includes(key)) {
        const found = underKind(key, rest);
        return found.kind === 'value' ? { ...found, value: ofList([found.value]) } : found.kind === 'unknown' ? { kind: 'unknown', known: found.known.map(name => `${kind}.${name}`) } : found;
    }
    if (rest.length === 0 && key === 'walls') return { kind: 'value', value: ofList([ofWord('front')]) };
    const declared = findDeclared(kind, path.join('.'));
    const computed = declared && figures[declared.is];
    const among = declared && wordsOfDeclared(kind, path.join('.'));
    if (computed) return { kind: 'value', value: among?.[0] === undefined ? computed : ofWord(among[0]), ...(among && { among }) };
    const property = propertiesOf(kind).get(key)?.property;
    if (property) {
        const [refersTo] = property.type.refersTo ?? [];
        if (rest.length > 0 && refersTo !== undefined && property.type.kind === 'reference') {
            const found = underKind(refersTo, rest);
            return found.kind === 'unknown' ? { kind: 'unknown', known: found.known.map(name => name.replace(`${refersTo}.`, `${kind}.${key}.`)) } : found;
        }
        const pieces = parts[property.type.kind];
        if (pieces) {
            const [piece = ''] = rest;
            const value = rest.length === 1 && pieces.includes(piece) ? property.type.kind === 'supply' ? supplyPieces[piece] : pieceValues[property.type.kind] : undefined;
            return value ? { kind: 'value', value } : { kind: 'unknown', known: pieces.map(piece => `${kind}.${key}.${piece}`) };
        }
        if (rest.length > 0) return { kind: 'waits' };
        const value = figures[property.type.kind];
        const among = wordsOf(property.type);
        return value ? { kind: 'value', value, ...(among && { among }) } : { kind: 'waits' };
    }
    return { kind: 'unknown', of: kind, known: [...propertiesOf(kind).keys(), ...declaredUnder(kind), 'wall', 'walls', 'name'].map(name => `${kind}.${name}`) };
}
