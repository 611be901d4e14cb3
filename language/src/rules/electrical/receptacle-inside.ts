import { inWords, type Finding } from '../../core/finding.js';
import { showCitation, type Citation } from '../../core/citation.js';
import { nameBlocks } from '../../assembly/naming.js';
import { showBlock } from '../../model/block.js';
import { electricalFamily } from '../../rule-sets/index.js';
import { iecCitations } from '../../rule-sets/iec-figures.js';
import { defineRule } from '../rule.js';
import { capital, electrician } from './electrical-findings.js';

const practice: Citation = { kind: 'practice', text: 'no receptacle inside a hot room' };

export const receptacleInside = defineRule({
    id: 'receptacle-inside',
    family: 'electrical',
    title: 'A receptacle stands inside the room',
    severity: 'error',
    why: 'Bare, wet people and a heat no receptacle or plug is made for. The IEC text forbids it; of the US texts named here none has a clause of its own on it, so there it is practice.',
    bad: 'receptacle socket { stands inside; height 18" }',
    good: 'receptacle socket { stands outside; height 18" }',
    sources: [iecCitations.socketOutlet, practice],
    isWaivable: true,
    fixes: 'review',
    *check({ job, results, ruleSets }): Generator<Finding> {
        const isIec = electricalFamily(ruleSets) === 'iec';
        const citation = isIec ? iecCitations.socketOutlet : practice;
        for (const { name, block } of nameBlocks(job.receptacles)) {
            const { stands } = block.values;
            if (!stands || !results.receptaclesInside.some(receptacle => receptacle.name === name)) continue;
            yield {
                at: stands.span, severity: isIec ? 'error' : 'warning',
                message: `${capital(showBlock(block))} stands inside; ${isIec ? 'no socket-outlet may' : 'none belongs there'} (${showCitation(citation)}). Place it outside the room. ${electrician}`,
                citation, measured: inWords('inside'), required: inWords('outside'),
                fixes: [{ title: 'Place it outside', safety: 'review', edits: [{ span: stands.span, newText: 'outside' }] }],
            };
        }
    },
});
