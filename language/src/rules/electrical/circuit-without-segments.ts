import { inWords, type Finding } from '../../core/finding.js';
import { correctionCitation } from '../../engines/electrical/us-tables.js';
import { showCitation } from '../../core/citation.js';
import { ambientFactorCitation } from '../../engines/electrical/iec-tables.js';
import { isKind } from '../../model/block.js';
import { defineRule } from '../rule.js';
import { capital, circuitName, electrician } from './electrical-findings.js';

export const circuitWithoutSegments = defineRule({
    id: 'circuit-without-segments',
    family: 'electrical',
    title: 'A circuit does not say where its run goes',
    severity: 'info',
    why: 'A conductor carries less in hot air: the tables want the temperature around every stretch of the run, and the voltage drop wants its length.',
    bad: 'circuit stove_feed { feeds stove; disconnect_in_sight yes }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [correctionCitation, ambientFactorCitation],
    isWaivable: true,
    fixes: 'none',
    *check({ results }): Generator<Finding> {
        for (const circuit of results.circuits) {
            const { block, family, heater } = circuit;
            if (!block?.isWhole || block.children.some(child => isKind(child, 'segment'))) continue;
            const citation = family === 'us' ? correctionCitation : ambientFactorCitation;
            yield {
                at: block.head,
                message: `${capital(circuitName(circuit))} has no segment; length and air temperature of each stretch are needed for its conductor and voltage drop (${showCitation(citation)}). No temperature is assumed: add a line such as segment wall { length 12'; ambient 86 degF }. ${electrician}`,
                citation, measured: inWords('no segment'), required: inWords('length and ambient of each stretch'), subject: `${heater.name}.conductor`,
            };
        }
    },
});
