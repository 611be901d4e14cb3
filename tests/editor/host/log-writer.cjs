/**
 * Writes the workbench's log files in plain JavaScript. The workbench's own writer is a native module that would have
 * to be compiled; without any writer the logs of the extension host and of every output channel are lost, and with them
 * the errors the suite must fail on. Files are small here, so nothing rotates.
 */
const fs = require('node:fs');
const path = require('node:path');

const levels = ['trace', 'debug', 'info', 'warning', 'error', 'critical'];

class Logger {
    #file;
    #level = 2;
    #isPlain = false;

    constructor(_kind, _name, file) {
        this.#file = file;
    }

    setLevel(level) { this.#level = level; }
    getLevel() { return this.#level; }
    setPattern() { /* one pattern serves */ }
    clearFormatters() { this.#isPlain = true; }
    flush() { /* every line is written at once */ }
    drop() { /* nothing is held */ }

    trace(text) { this.#write(0, text); }
    debug(text) { this.#write(1, text); }
    info(text) { this.#write(2, text); }
    warn(text) { this.#write(3, text); }
    error(text) { this.#write(4, text); }
    critical(text) { this.#write(5, text); }

    #write(level, text) {
        if (level < this.#level) return;
        fs.appendFileSync(this.#file, this.#isPlain ? text : `${new Date().toISOString().replace('T', ' ').slice(0, 23)} [${levels[level]}] ${text}\n`);
    }
}

async function createLogger(name, file) {
    await fs.promises.mkdir(path.dirname(file), { recursive: true });
    return new Logger('file', name, file);
}

exports.version = 0;
exports.Logger = Logger;
exports.setLevel = () => {};
exports.setFlushOn = () => {};
exports.createRotatingLogger = createLogger;
exports.createAsyncRotatingLogger = createLogger;
