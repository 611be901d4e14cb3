import { inWords } from '../../core/finding.js';
import { imc } from '../../rule-sets/documents.js';
import { clauseKeys, keyWord, showConflict, showFigure, strictest, type ClauseKey } from '../../rule-sets/index.js';
import { decidedWords } from '../../vocabulary/blocks/job.js';
import { defineRule } from '../rule.js';

export const textsDisagree = defineRule({
    id: 'texts-disagree',
    family: 'job',
    title: 'Two published texts the job names want different things',
    severity: 'info',
    why: 'Neither is the stricter, so nothing can be worked out from both: the job has to say which it follows, and the local authority decides.',
    bad: 'rules us_dwelling, us_commercial',
    good: 'rules us_dwelling, us_commercial\ndecision { about notice_required; follows "IMC 2018, 914.5.1, exception"; because "a dwelling"; by "design office" }',
    sources: [imc.fromMemory('914.5.1', 'A permanent warning notice; one- and two-family dwellings are exempt.')],
    isWaivable: true,
    fixes: 'none',
    *check({ job, ruleSets }) {
        const rules = job.block.values.rules;
        if (!rules || !job.isWhole || job.decisions.some(({ isWhole }) => !isWhole)) return;
        for (const key of Object.keys(clauseKeys) as ClauseKey[]) {
            const word = keyWord(key);
            if (!(decidedWords as readonly string[]).includes(word)) continue;
            const conflict = strictest(ruleSets, key)?.conflicts.find(({ kind }) => kind === 'disagreement');
            if (!conflict) continue;
            yield {
                at: rules.span,
                message: `${showConflict(conflict, job.unit)} Say which the job follows: decision { about ${word}; follows "…"; because "…"; by "…" }.`,
                citation: conflict.other.clause.citation, measured: inWords('not decided'), required: inWords(`${showFigure(conflict.governing.clause.figure, job.unit)} or ${showFigure(conflict.other.clause.figure, job.unit)}`),
            };
        }
    },
});
