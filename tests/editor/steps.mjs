/** Runs named steps one after the other, prints each, and ends with one closing line. */
export class Steps {
    #passed = 0;
    #failed = 0;
    #halted = false;
    #onFailure;

    /** @param onFailure called with the step's number and name, for a picture of what went wrong. */
    constructor(onFailure) {
        this.#onFailure = onFailure;
    }

    /**
     * @param options `needed: true` for a step without which the later ones mean nothing: they are then counted as failed.
     */
    async step(name, run, options = {}) {
        if (this.#halted) {
            this.#failed++;
            console.log(`not run  ${name}`);
            return;
        }
        const started = Date.now();
        try {
            const detail = await run();
            this.#passed++;
            console.log(`ok       ${name} (${seconds(started)})${detail ? `: ${detail}` : ''}`);
        } catch (error) {
            this.#failed++;
            this.#halted = options.needed === true;
            console.log(`FAILED   ${name} (${seconds(started)})\n${String(error?.stack ?? error).replace(/^/gm, '         ')}`);
            await this.#onFailure?.(this.#passed + this.#failed, name);
        }
    }

    /** Prints the closing line. @returns the process's exit code. */
    close() {
        console.log(`${this.#passed} passed, ${this.#failed} failed`);
        return this.#failed === 0 && this.#passed > 0 ? 0 : 1;
    }
}

function seconds(since) {
    return `${((Date.now() - since) / 1000).toFixed(1)} s`;
}
