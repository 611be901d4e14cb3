import { csa, documents } from './documents.js';
import { hours, no, word, yes } from './figure.js';
import { clause, type RuleSet } from './rule-set.js';

const notPart = { when: 'timer_apart' } as const;

export const canadaElectrical: RuleSet<'ca_electrical'> = {
    id: 'ca_electrical',
    title: 'Canada, electrical',
    family: 'us',
    scope: 'The heater of a room in Canada.',
    documents: [documents.csa],
    clauses: [
        clause('heater.room-to-nameplate', yes, csa('62-222 1) to 3)', 'The heater is marked as suitable and the room is built to the size on its nameplate.')),
        clause('heater.clearances-to-nameplate', yes, csa('62-222 1) to 3)', 'The clearances on the nameplate are kept.')),
        clause('heater.below-water', no, csa('62-222 1) to 3)', 'The heater is not below shower heads or water sprays.')),
        clause('timer.required', yes, csa('62-222 4)', 'A timed cut-off controls the heater.')),
        clause('timer.duration', hours(1), csa('62-222 4)', 'The timed cut-off runs 1 hour at most.')),
        clause('timer.override', no, csa('62-222 4)', 'The timed cut-off has no override.')),
        clause('timer.place', word('outside_the_room'), csa('62-222 4)', 'The timed cut-off is on the outside wall of the room.'), notPart),
        clause('timer.opens-all-ungrounded', yes, csa('62-222 4)', 'The timed cut-off opens all ungrounded conductors.')),
    ],
    notChecked: [
        'the branch-circuit rules of the Canadian Electrical Code: circuits are calculated by the NEC and have to be compared',
        'provincial codes and amendments',
        'certification marks of the heater',
        'building, fire and mechanical codes of Canada',
    ],
};
