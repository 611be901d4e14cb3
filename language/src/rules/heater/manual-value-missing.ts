import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import { heaterFindings, inCatalogue, lacks, modelSpan } from './heater-findings.js';

export const manualValueMissing = defineRule({
    id: 'manual-value-missing',
    family: 'heater',
    title: 'The manual of the heater leaves out what a check needs',
    severity: 'warning',
    why: 'A figure the manual does not state is never made up, so what depends on it is not checked; the maker of the heater has to be asked.',
    bad: 'heater stove on right { model Beck60; from front 8"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the manual of the heater' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const missing = needed.filter(({ key, when }) => lacks(judged.model, key) && (when?.(judged) ?? true));
        if (missing.length === 0) return undefined;
        const { name, manual } = judged;
        return {
            at: modelSpan(judged),
            message: `${manual.title} does not state ${showList(missing.map(({ words }) => words))} of heater ${name}; what depends on ${missing.length === 1 ? 'it' : 'them'} is not checked. Ask the maker of the heater and write ${showList(missing.map(({ key }) => key))} in its entry.`,
            citation: { kind: 'manual', text: manual.title }, measured: inWords('not stated'), required: inWords(missing.map(({ key }) => key).join(', ')), subject: name, related: inCatalogue(judged, judged.model.head, 'The entry is here.'),
        };
    }),
});

/** What checks need, in the order of the vocabulary. The bench figure is not among them: a manual without it means the one for the side or the front. */
const needed: readonly { readonly key: string; readonly words: string; readonly when?: (judged: JudgedHeater) => boolean }[] = [
    { key: 'volume', words: 'the volume range' },
    { key: 'off_wall', words: 'the distance from the wall' },
    { key: 'off_floor', words: 'the height over the floor' },
    { key: 'clear_side', words: 'the clearance to the sides' },
    { key: 'clear_front', words: 'the clearance before it' },
    { key: 'clear_above', words: 'the clearance above' },
    { key: 'clear_below', words: 'the clearance to a floor that burns', when: ({ clearances }) => clearances.some(({ thing, status }) => thing.kind === 'floor' && status === 'missing') },
    { key: 'room_height', words: 'the least room height' },
    { key: 'fasten_height', words: 'the height of the upper fastenings' },
    { key: 'fasten_width', words: 'the distance between the upper fastenings' },
    { key: 'guard', words: 'whether a guard is needed' },
    { key: 'sensor', words: 'the place of the sensor' },
    { key: 'control', words: 'the place of the control' },
];
