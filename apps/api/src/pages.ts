import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** For each page of the build, its path on disk and the policy that lets its own inline scripts run and nothing else. */
export type PagePolicies = ReadonlyMap<string, string>;

/** An inline script: the build writes a few into every page, and no two builds the same ones. */
const INLINE_SCRIPT = /<script(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g;

/** Reads every page of the web build in `folder` once and hashes its inline scripts. */
export async function readPagePolicies(folder: string): Promise<PagePolicies> {
  const names = await readdir(folder, { recursive: true });
  const pages = names.filter((name) => name.endsWith('.html')).map((name) => join(folder, name));
  const policies = pages.map(async (page) => [page, policyFor(await readFile(page, 'utf8'))] as const);
  return new Map(await Promise.all(policies));
}

function policyFor(html: string): string {
  const hashes = [...html.matchAll(INLINE_SCRIPT)].map(([, script]) => `'sha256-${hashOf(script ?? '')}'`);
  return contentPolicy(["'self'", ...new Set(hashes)]);
}

/** Scripts and styles from here only; no frames, no plugins, no forms to elsewhere. */
export function contentPolicy(scripts: string[]): string {
  return [
    "default-src 'self'",
    `script-src ${scripts.join(' ')}`,
    "style-src 'self'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('base64');
}
