import { inWords, type Finding } from '../../core/finding.js';
import type { Citation } from '../../core/citation.js';
import { showCitation } from '../../core/citation.js';
import { imc } from '../../rule-sets/documents.js';
import { showFigure } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { governs, placeWords, roleOf } from './air-findings.js';

const practice: Citation = { kind: 'practice', text: 'an exhaust low and across the room' };

export const exhaustMissing = defineRule({
    id: 'exhaust-missing',
    family: 'air',
    title: 'The room has no exhaust',
    severity: 'warning',
    why: 'Used and moist air has to leave: without a way out the intake brings nothing in, and the lining stays wet after bathing.',
    bad: '// without vent exhaust',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [imc('914.5', 'A ventilation opening of at least 4 in by 8 in.'), practice],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const { job } = input;
        const isKnown = job.isWhole && job.vents.every(vent => vent.isWhole && roleOf(vent) !== undefined);
        if (!job.room || !isKnown || job.vents.some(vent => roleOf(vent) === 'exhaust')) return;
        const size = governs(input, 'vent.opening-size');
        const place = governs(input, 'vent.opening-place');
        const isPublished = size?.clause.citation.kind === 'standard';
        const citation = size?.clause.citation ?? place?.clause.citation ?? practice;
        yield {
            at: job.room.head, severity: isPublished ? 'error' : 'warning',
            message: `The room has no exhaust; ${size ? `an opening of ${showFigure(size.figure, job.unit)} or more` : 'an opening'} is needed ${placeWords(place?.figure.value ?? 'across_the_room_low')} (${showCitation(citation)}). Write a block such as vent exhaust on left { size …; from front …; bottom …; air … } there.`,
            citation, measured: inWords('none'), required: inWords(size ? showFigure(size.figure, job.unit) : placeWords(place?.figure.value ?? 'across_the_room_low')), subject: 'air.exhaust',
        };
    },
});
