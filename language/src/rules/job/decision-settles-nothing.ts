import { inWords } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showList } from '../../core/show.js';
import { keyOfWord, settlementOf, strictest, textsAbout } from '../../rule-sets/index.js';
import { imc } from '../../rule-sets/documents.js';
import { replaceValue } from '../fixes.js';
import { defineRule } from '../rule.js';

export const decisionSettlesNothing = defineRule({
    id: 'decision-settles-nothing',
    family: 'job',
    title: 'A decision that decides nothing',
    severity: 'warning',
    why: 'Who reads it believes something was chosen, and the rule sets govern as if it were not there.',
    bad: 'rules us_commercial, good_practice\ndecision { about vent_opening_place; follows "IRC 2018"; because "as the authority wants it"; by "design office" }',
    good: 'rules us_commercial, good_practice\ndecision { about vent_opening_place; follows "common practice"; because "as the authority wants it"; by "design office" }',
    sources: [imc('914.5', 'The opening is near the top of the door into the room.')],
    isWaivable: true,
    fixes: 'review',
    *check({ job, ruleSets }) {
        if (!job.isWhole) return;
        for (const block of job.decisions) {
            const { about, follows } = block.values;
            const key = about && keyOfWord(about.value);
            if (!key || !follows) continue;
            const texts = textsAbout(ruleSets, key).map(({ clause }) => showCitation(clause.citation));
            const { followed } = settlementOf(ruleSets, { about: key, follows: follows.value });
            if (texts.length > 0 && followed.length === 0) {
                yield {
                    at: follows.span,
                    message: `No rule set of the job cites ‘${follows.value}’ for ${about.value}; there ${texts.length === 1 ? 'is' : 'are'} ${showList(texts)}. Write the beginning of one, or name the rule set that holds it.`,
                    measured: inWords(follows.value), required: inWords(showList(texts, 'or')), fixes: texts.map(text => replaceValue(`Follow ${text}`, follows.span, `"${text}"`)),
                };
            } else if ((strictest(ruleSets, key)?.conflicts.length ?? 0) === 0) {
                yield {
                    at: about.span,
                    message: `The rule sets of the job do not disagree about ${about.value}, so there is nothing to decide. Remove the decision, or name the rule sets it is about.`,
                    measured: inWords('no dispute'), required: inWords('texts that disagree'), fixes: [{ title: 'Remove the decision', safety: 'review', edits: [{ span: block.span, newText: '' }] }],
                };
            }
        }
    },
});
