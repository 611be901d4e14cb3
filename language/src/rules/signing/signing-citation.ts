export const signingCitation = { kind: 'practice', text: 'a drawing that is changed after it was signed gets a new revision and is signed again' } as const;
