/** Stands for the test runner where the tables are only read: nothing in them may run a test. */
const refuse = () => { throw new Error('A table of published figures runs a test while it is read.'); };
export { refuse as expect, refuse as test, refuse as describe, refuse as beforeAll };
