import { inWords } from '../../core/finding.js';
import type { Finding, Fix } from '../../core/finding.js';
import type { Span } from '../../core/span.js';
import { showCitation, type Citation } from '../../core/citation.js';
import { ambientFactorCitation } from '../../engines/electrical/iec-tables.js';
import { correctionCitation } from '../../engines/electrical/us-tables.js';
import { defineRule } from '../rule.js';
import { circuitName, electrician } from './electrical-findings.js';

const family = { us: 'the NEC', iec: 'IEC 60364' } as const;

export const circuitFactOfOtherRules = defineRule({
    id: 'circuit-fact-of-other-rules',
    family: 'electrical',
    title: 'A fact of the circuit belongs to other electrical rules',
    severity: 'warning',
    why: 'The two families name insulation and installation differently. A word of the other family is not understood: the usual value is taken instead, and a weaker insulation would then be reckoned as a better one.',
    bad: 'circuit stove_feed { feeds stove; method C; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; insulation degC_75; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [correctionCitation, ambientFactorCitation],
    isWaivable: true,
    fixes: 'safe',
    *check({ results }): Generator<Finding> {
        for (const circuit of results.circuits) {
            const { insulation, method, terminals } = circuit.block?.values ?? {};
            const isUs = circuit.family === 'us';
            const citation: Citation = isUs ? correctionCitation : ambientFactorCitation;
            const isForeign = insulation && (insulation.value === 'pvc' || insulation.value === 'xlpe') === isUs;
            if (isForeign) yield {
                at: insulation.span,
                message: `The insulation of ${circuitName(circuit)} is ${insulation.value}, which ${family[circuit.family]} does not name; the circuit is calculated for ${isUs ? '90 °C insulation' : 'PVC of 70 °C'} instead (${showCitation(citation)}). Write ${isUs ? 'degC_60, degC_75 or degC_90' : 'pvc or xlpe'} as the cable is marked. ${electrician}`,
                citation, measured: inWords('written'), required: inWords('left out'), subject: `${circuit.heater.name}.conductor`,
            };
            const [key, unused] = isUs ? ['method', method] as const : ['terminals', terminals] as const;
            if (unused) yield {
                at: unused.span, severity: 'info', citation, measured: inWords('written'), required: inWords('left out'), subject: `${circuit.heater.name}.conductor`,
                message: `The ${key} of ${circuitName(circuit)} ${isUs ? 'plays' : 'play'} no part in a calculation by ${family[circuit.family]}. Remove the line, or look at the rules the job names.`,
                fixes: remove(unused.fact),
            };
        }
    },
});

const remove = (span: Span): readonly Fix[] => [{ title: 'Remove this line', safety: 'safe', edits: [{ span, newText: '' }] }];
