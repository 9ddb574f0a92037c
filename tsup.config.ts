import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    schemas: 'src/schemas/index.ts',
    registry: 'src/registry.ts',
    'words/en': 'src/words/en.ts',
  },
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  splitting: true,
  dts: true,
  clean: true,
  sourcemap: false,
  treeshake: false,
  external: ['zod'],
});
