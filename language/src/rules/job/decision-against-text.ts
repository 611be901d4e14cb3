import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { keyOfWord, showFigure, strictest } from '../../rule-sets/index.js';
import { imc } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';

export const decisionAgainstText = defineRule({
    id: 'decision-against-text',
    family: 'job',
    title: 'The job follows practice against a published text',
    severity: 'warning',
    why: 'Practice has no authority over a code. The job may be built so only where the local authority agrees, and its agreement belongs to the papers.',
    bad: 'rules us_commercial, good_practice\ndecision { about vent_opening_place; follows "common practice"; because "as the authority wants it"; by "design office" }',
    good: 'rules us_commercial, good_practice\ndecision { about vent_opening_place; follows "IMC 2018"; because "as the code has it"; by "design office" }',
    sources: [imc('914.5', 'The opening is near the top of the door into the room.')],
    isWaivable: true,
    fixes: 'none',
    *check({ job, ruleSets }) {
        for (const { values: { about, follows, by } } of job.decisions) {
            const key = about && keyOfWord(about.value);
            const rule = key && strictest(ruleSets, key);
            if (!rule || !follows || rule.clause.citation.kind === 'standard') continue;
            const against = rule.conflicts.find(({ kind, other }) => kind === 'decided' && other.clause.citation.kind === 'standard')?.other.clause;
            if (!against) continue;
            yield {
                at: follows.span,
                message: `The job follows ${showCitation(rule.clause.citation)} (${showFigure(rule.figure, job.unit)}) against ${showCitation(against.citation)} (${showFigure(against.figure, job.unit)}), as ${by?.value ?? 'somebody'} decided. The local authority is the one who decides: have its agreement in writing.`,
                citation: against.citation, measured: inWords(showFigure(rule.figure, job.unit)), required: inWords(showFigure(against.figure, job.unit)),
            };
        }
    },
});
