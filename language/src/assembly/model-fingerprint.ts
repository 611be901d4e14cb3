import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Part } from '../engines/parts/part.js';
import { panelUnits } from '../engines/shell/parts.js';
import type { ShellPanel } from '../engines/shell/shell-result.js';
import { byText, catalogueFacts, factsOfJob, type FactValue, type PlacedFact } from '../model/given-facts.js';
import type { Job } from '../model/job.js';
import type { Results } from './results.js';

/** Hexadecimal digits of a fingerprint: the first 128 bits of SHA-256 (FIPS 180-4). */
const digits = 32;

/**
 * What a signature stands for, as one short word: equal for jobs that mean the same, however they are laid out, ordered, measured in or calculated.
 * It covers the number, title and revision on the paper; all the job and the catalogue entries it reaches say, the rule sets it is judged by among it; what
 * is accepted, why and by whom; and the panels and parts that are cut. It leaves out sign-offs, how long a waiver holds, places and layout, units and
 * names of calculations, and what follows from the rest or changes with the day, the settings or the version of the program without another cut: computed
 * figures, findings and their severities.
 */
export const modelFingerprint = (job: Job, results: Pick<Results, 'parts' | 'shell'>): string =>
    bytesToHex(sha256(utf8ToBytes(JSON.stringify(signedModel(job, results))))).slice(0, digits);

/** A fingerprint as it may be written: in either case, in groups. */
export const sameFingerprint = (written: string, own: string): boolean => written.replaceAll(/[\s-]/g, '').toLowerCase() === own;

function signedModel(job: Job, { parts, shell }: Pick<Results, 'parts' | 'shell'>): unknown {
    const { name, title, values } = job.block;
    return [
        'hotroom-signed-model 1',
        [name?.value, title?.value, values.number?.value, values.revision?.value, job.variant?.name].map(text => text ?? null),
        inOrder(factsOfJob(job).map(plainFact)), inOrder(catalogueFacts(job).map(plainFact)),
        inOrder(job.waivers.map(({ rule, subject, because, by }) => [rule.value, subject?.value ?? null, because, by])),
        inOrder(shell ? panelUnits(shell.result).map(plainPanel) : []), inOrder(parts.map(plainPart)),
    ];
}

/** The order things are written in says nothing. */
const inOrder = (rows: readonly unknown[]): readonly unknown[] => rows.map(row => ({ row, text: JSON.stringify(row) })).sort((a, b) => byText(a.text, b.text)).map(({ row }) => row);

const plainFact = ([path, value]: PlacedFact): unknown => [path, plainValue(value)];
/** Lengths by their ticks alone, so that the way they are shown may change. */
const plainValue = (value: FactValue): unknown => value.kind === 'length' ? ['length', value.ticks]
    : value.kind === 'list' ? ['list', value.items.map(plainValue)]
    : value.kind === 'block' ? ['block', value.block, value.title ?? null, value.walls] : Object.values(value);

const plainPanel = ({ mark, kind, cover, overall, height, thickness, at }: ShellPanel): unknown => [mark, kind, cover, overall, height, thickness, at.from];
const plainPart = ({ mark, count, section, length, ends, notches, cut, material, goesTo }: Part): unknown => [
    mark, count, material.stock ?? null, section.thickness, section.width, length, [ends.left, ends.right, ends.across ?? null], cut, goesTo,
    notches.map(({ side, end, from, length: along, depth, toward }) => [side, end, from, along, depth, toward ?? null]),
];
