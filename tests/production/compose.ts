import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parse } from 'yaml';

export const ROOT = resolve(import.meta.dirname, '../..');

export interface ComposeService {
  image: string;
  build?: { context: string; dockerfile: string };
  command?: string[];
  environment?: Record<string, string | number>;
  volumes?: string[];
  ports?: string[];
  healthcheck?: { test: string[] };
  depends_on?: Record<string, { condition: string }>;
}

const text = readFileSync(join(ROOT, 'docker-compose.yml'), 'utf8');

export const compose = parse(text, { merge: true }) as {
  services: Record<'db' | 'migrate' | 'web' | 'api', ComposeService>;
  volumes: Record<string, unknown>;
};

/** The settings that `docker-compose.yml` asks for, by name. */
export const askedFor = new Set([...text.matchAll(/\$\{(\w+)/g)].map(([, name]) => name ?? ''));

/** The settings that `.env.example` explains, with the values it suggests. */
export function readExample(): Map<string, string> {
  const lines = readFileSync(join(ROOT, '.env.example'), 'utf8').split('\n');
  return new Map(
    lines
      .filter((line) => /^\w+=/.test(line))
      .map((line) => [line.slice(0, line.indexOf('=')), line.slice(line.indexOf('=') + 1)]),
  );
}

/** The environment of a service as Docker fills it in from these settings. */
export function environmentOf(service: ComposeService, settings: Map<string, string>) {
  const entries = Object.entries(service.environment ?? {}).map(([name, value]) => {
    const filled = String(value).replace(/\$\{(\w+)(?::[-?]([^}]*))?\}/g, (_whole, key, otherwise) => {
      return settings.get(key) || otherwise || '';
    });
    return [name, filled] as const;
  });
  return Object.fromEntries(entries);
}
