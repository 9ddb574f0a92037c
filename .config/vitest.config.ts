import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^chain-rigging$/, replacement: `${root}src/index.ts` },
      { find: /^chain-rigging\/schemas$/, replacement: `${root}src/schemas/index.ts` },
      { find: /^chain-rigging\/registry$/, replacement: `${root}src/registry.ts` },
      { find: /^chain-rigging\/words\/en$/, replacement: `${root}src/words/en.ts` },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 30_000,
  },
});
