import { test } from 'vitest';
import { revisionNotSigned as rule } from '../../../language/src/rules/signing/revision-not-signed.js';
import { checkFindings } from '../../support/check.js';
import { signOff } from './signed.js';

test('reports a revision that follows a signed one and is not signed', () => checkFindings(rule, `
    revision "C"
    //       ^^^ info: Revision C is not signed; revisions A and B were (a drawing that is changed after it was signed gets a new revision and is signed again; common practice, no source). Have it reviewed and signed before wood is cut.
    ${signOff('A')}
    ${signOff('B')}
`));
test('accepts a revision that is signed beside an older one', () => checkFindings(rule, `revision "B"\n${signOff('A')}\n${signOff('B')}`));
test('a job nobody signed says nothing', () => checkFindings(rule, 'revision "C"'));
test('stays silent while the revision is being typed', () => checkFindings(rule, `
    revision
    ${signOff('A')}
`));
