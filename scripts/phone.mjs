// What a phone carries: the app at the pump, its worker, its service worker, its styles and fonts. Written into .phone, each
// under a name that holds the sum of its content, and packed beside it, so that the server need pack nothing.
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import zlib from 'node:zlib';
import tailwind from '@tailwindcss/postcss';
import * as esbuild from 'esbuild';
import postcss from 'postcss';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const folder = path.join(root, '.phone');
const at = (...parts) => path.join(root, ...parts);

/** Tailwind first, then esbuild follows what the styles import. */
const styles = {
  name: 'styles',
  setup({ onLoad }) {
    onLoad({ filter: /app\/phone\/phone\.css$/ }, async ({ path: from }) => {
      const { css } = await postcss([tailwind({ optimize: true })]).process(fs.readFileSync(from, 'utf8'), { from });
      return { contents: css, loader: 'css', resolveDir: path.dirname(from) };
    });
  },
};

/** What would bring the server, its schemas or another way of drawing onto the phone. */
const NOT_ON_A_PHONE = /^node_modules\/(zod|next|react-dom|better-auth|pg|@prisma)\/|^lib\/(db|audit|auth|jobs)\//;

const common = {
  bundle: true,
  minify: true,
  write: true,
  metafile: true,
  format: 'esm',
  target: ['chrome111', 'firefox114', 'safari16.4'],
  outdir: folder,
  entryNames: '[name]-[hash]',
  chunkNames: '[name]-[hash]',
  assetNames: '[name]-[hash]',
  publicPath: '/phone/',
  jsx: 'automatic',
  legalComments: 'none',
  absWorkingDir: root,
  logLevel: 'warning',
};

/** Builds everything anew; `.phone/files.json` says what is what. */
export async function buildPhone() {
  fs.rmSync(folder, { recursive: true, force: true });
  fs.mkdirSync(folder, { recursive: true });
  const define = { 'process.env.NODE_ENV': '"production"' };
  const worker = await built({ entryPoints: [at('app/phone/worker/worker.ts')], splitting: true, define });
  const zxing = kept(at('node_modules/zxing-wasm/dist/reader/zxing_reader.wasm'));
  const style = await built({
    entryPoints: [at('app/phone/phone.css')],
    plugins: [styles],
    loader: { '.woff2': 'file', '.woff': 'empty' },
  });
  const main = await built({
    entryPoints: [at('app/phone/main.tsx')],
    splitting: true,
    // Its links are plain: the app follows them itself.
    // The same parts as the pages', drawn by a library a tenth the size.
    alias: {
      'next/link': './app/phone/plain-link.tsx',
      react: 'preact/compat',
      'react-dom/client': 'preact/compat/client',
      'react/jsx-runtime': 'preact/jsx-runtime',
    },
    define: { ...define, WORKER_PATH: JSON.stringify(worker.entry), ZXING_PATH: JSON.stringify(zxing) },
  });
  const files = [...worker.files, ...style.files, ...main.files, zxing];
  const version = createHash('sha256').update(files.sort().join()).digest('hex').slice(0, 12);
  await esbuild.build({
    ...common,
    entryPoints: [at('app/phone/service-worker.ts')],
    entryNames: 'sw',
    define: { FILES: JSON.stringify(files), VERSION: JSON.stringify(version) },
  });
  for (const name of fs.readdirSync(folder)) pack(path.join(folder, name));
  const told = {
    ...{ version, files, zxing, style: style.entry },
    ...{ script: main.entry, worker: worker.entry, parts: [...worker.parts, ...main.parts] },
  };
  fs.writeFileSync(path.join(folder, 'files.json'), JSON.stringify(told));
}

async function built(options) {
  const { metafile } = await esbuild.build({ ...common, ...options });
  const strange = Object.keys(metafile.inputs).filter((name) => NOT_ON_A_PHONE.test(name));
  if (strange.length > 0) throw new Error(`These do not belong on a phone: ${strange.join(', ')}`);
  const outputs = Object.entries(metafile.outputs).filter(([name]) => !name.endsWith('.map'));
  // What is fetched later has an entry of its own.
  const first = path.relative(root, options.entryPoints[0]);
  const [entry, { imports }] = outputs.find(([, { entryPoint }]) => entryPoint === first);
  const url = (name) => `/phone/${path.basename(name)}`;
  // What the entry imports at once: it is asked for together with it, not after it.
  const parts = imports.filter(({ kind }) => kind === 'import-statement');
  return { entry: url(entry), parts: parts.map((part) => url(part.path)), files: outputs.map(([name]) => url(name)) };
}

/** Copies a file under the name of its content. */
function kept(from) {
  const content = fs.readFileSync(from);
  const { name, ext } = path.parse(from);
  const file = `${name}-${createHash('sha256').update(content).digest('hex').slice(0, 8).toUpperCase()}${ext}`;
  fs.writeFileSync(path.join(folder, file), content);
  return `/phone/${file}`;
}

function pack(file) {
  if (!/\.(js|css|wasm)$/.test(file)) return;
  const content = fs.readFileSync(file);
  fs.writeFileSync(`${file}.br`, zlib.brotliCompressSync(content));
  fs.writeFileSync(`${file}.gz`, zlib.gzipSync(content, { level: 9 }));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await buildPhone();
