import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { PrismaPg } from '@prisma/adapter-pg';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import type { SchemaEngine, SchemasContainer } from '@prisma/schema-engine-wasm';

/**
 * Prisma's own schema engine, compiled to WebAssembly: it knows which tables the models mean, without a downloaded binary. The package expects a bundler to link the wasm file; Node does not, so it is linked by hand.
 */
export async function openSchemaEngine(ownerUrl: string, models: SchemasContainer): Promise<SchemaEngine> {
  linked ??= linkEngineModule();
  const engineModule = await linked;
  const adapter = bindMigrationAwareSqlAdapterFactory(new PrismaPg({ connectionString: ownerUrl }));
  const datamodels = models.files.map((file): [string, string] => [file.path, file.content]);
  return engineModule.SchemaEngine.new({ datamodels }, () => {}, adapter);
}

/** Linked once a process: its glue remembers the first instance, and a second one would hang. */
let linked: Promise<EngineModule> | null = null;

type EngineModule = typeof import('@prisma/schema-engine-wasm');

/** `WebAssembly` is in no type library without the DOM's; this is the one call needed. */
declare const WebAssembly: {
  instantiate(
    bytes: Uint8Array,
    imports: object,
  ): Promise<{ instance: { exports: { __wbindgen_start(): void } } }>;
};

async function linkEngineModule(): Promise<EngineModule> {
  const entry = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const glue = await import(pathToFileURL(entry).href);
  const bytes = await readFile(entry.replace(/\.js$/, '.wasm'));
  const { instance } = await WebAssembly.instantiate(bytes, { './schema_engine_bg.js': glue });
  glue.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start();
  return glue;
}
