/** Cuts this process off from every network but this machine's own loopback, where the system allows it. */
import { spawnSync } from 'node:child_process';

const marker = 'HOTROOM_NETWORK_CUT';

// A user namespace lets an ordinary account do it too.
const ways = [['-n'], ['-rn']];

/** @returns 'cut' inside the cut-off process, 'open' when this system allows no cut. Does not return in the process that started the other. */
export function cutNetwork(script) {
    if (process.env[marker] === '1') return 'cut';
    const way = ways.find(flags => spawnSync('unshare', [...flags, 'sh', '-c', 'ip link set lo up'], { stdio: 'ignore' }).status === 0);
    if (!way) return 'open';
    const done = spawnSync('unshare', [...way, 'sh', '-c', 'ip link set lo up && exec "$0" "$@"', process.execPath, script, ...process.argv.slice(2)], {
        stdio: 'inherit',
        env: { ...process.env, [marker]: '1' },
    });
    process.exit(done.status ?? 1);
}
