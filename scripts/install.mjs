// Makes node_modules fit the lock file, before anything from it is imported: a fresh clone needs no command but its own.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const at = (file) => path.join(root, file);
const STAMP = 'node_modules/.installed-from';
/** npm writes this last, so a broken installation has none. */
const NPMS_OWN = 'node_modules/.package-lock.json';

export function install() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(`Bedplate needs Node.js 20.19 or newer; this is ${process.versions.node}.`);
    process.exit(1);
  }
  const sum = createHash('sha256')
    .update(fs.readFileSync(at('package-lock.json')))
    .digest('hex');
  if (isInstalled(sum)) return;
  console.log('Installing what the lock file names ...');
  // npm tells where it is when it runs us; else it is found by its name.
  const npm = process.env.npm_execpath?.endsWith('.js') ? [process.execPath, process.env.npm_execpath] : ['npm'];
  const { status, error } = spawnSync(npm[0], [...npm.slice(1), 'ci', '--include=dev'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: npm.length === 1 && process.platform === 'win32',
    // npm hands its own settings on by variable; one of them may say to leave half of it out.
    env: Object.fromEntries(
      Object.entries(process.env).filter(([name]) => !/^npm_config_(omit|include|production)$/i.test(name)),
    ),
  });
  if (error || status !== 0) {
    console.error(error ? `npm could not be run: ${error.message}` : 'npm ci failed: see above.');
    process.exit(1);
  }
  fs.writeFileSync(at(STAMP), sum);
}

function isInstalled(sum) {
  if (!fs.existsSync(at(NPMS_OWN))) return false;
  if (fs.existsSync(at(STAMP)) && fs.readFileSync(at(STAMP), 'utf8') === sum) return true;
  // Installed by hand: then npm's own note is newer than the lock file, and vitest tells that nothing was left out.
  const isNewer = fs.statSync(at(NPMS_OWN)).mtimeMs >= fs.statSync(at('package-lock.json')).mtimeMs;
  return isNewer && fs.existsSync(at('node_modules/vitest'));
}
